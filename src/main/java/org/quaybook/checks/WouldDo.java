package org.quaybook.checks;

import java.util.Locale;
import java.util.Optional;
import org.quaybook.diag.Message;
import org.quaybook.diag.MessageKey;
import org.quaybook.figures.RunningFigures.Wished;

/** What would make a load run as long as wished, in parts of a sentence. */
enum WouldDo implements MessageKey {
    STRINGS,
    STRINGS_OR_LARGER,
    CAPACITY,
    CABLES,
    EITHER,
    NO_CABLE,
    NOTHING;

    @Override
    public String key() {
        return "would-do." + name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** @param voltageEnds whether the voltage and not the reserve ends it today */
    static Message of(Wished wish, boolean voltageEnds) {
        Optional<Message> bank = wish.strings()
                .flatMap(strings -> wish.blocks()
                        .map(blocks -> wish.capacity()
                                .map(capacity -> Message.of(
                                        STRINGS_OR_LARGER, strings.stated(), blocks.stated(), capacity.stated()))
                                .orElseGet(() -> Message.of(STRINGS, strings.stated(), blocks.stated()))))
                .or(() -> wish.capacity().map(capacity -> Message.of(CAPACITY, capacity.stated())));
        Optional<Message> cables = wish.resistance()
                .flatMap(most -> wish.conductor().map(conductor -> Message.of(CABLES, conductor, most.stated())));
        if (bank.isPresent() && cables.isPresent()) {
            return Message.of(EITHER, bank.get(), cables.get());
        }
        if (bank.isPresent() && voltageEnds) {
            return Message.of(NO_CABLE, bank.get());
        }
        return bank.or(() -> cables).orElseGet(() -> Message.of(NOTHING));
    }
}
