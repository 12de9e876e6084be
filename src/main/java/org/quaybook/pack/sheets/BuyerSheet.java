package org.quaybook.pack.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.quaybook.job.Account;
import org.quaybook.job.Bank;
import org.quaybook.job.Charging;
import org.quaybook.job.Generator;
import org.quaybook.job.Inverter;
import org.quaybook.job.Mentions;
import org.quaybook.job.Shore;
import org.quaybook.record.DueDates;
import org.quaybook.record.Edition;
import org.quaybook.record.RecordLink;
import org.quaybook.record.Rows;

/** For whoever buys it: what goes with it, where the record is, what the seller has to let go, what falls due. */
final class BuyerSheet {

    private final SheetNotes notes;
    private final List<Account> accounts;
    private final Mentions seller;

    /**
     * Of a job without its owner.
     *
     * @param accounts that went with it so far; who holds them is not said
     * @param seller who is not named, whatever text repeats it
     */
    BuyerSheet(SheetNotes notes, List<Account> accounts, Mentions seller) {
        this.notes = notes;
        this.accounts = accounts;
        this.seller = seller;
    }

    Map<String, Object> facts() {
        return new Rows()
                .put("included", included())
                .put("papers", papers())
                .put("record", record())
                .put("accounts", accounts.stream().map(this::account).toList())
                .put("release", release())
                .put("first", first())
                .put("due", due())
                .map();
    }

    private FormRows form() {
        return new FormRows(notes.words(), "sheets.buyer.");
    }

    private List<Map<String, Object>> included() {
        Bank bank = notes.job().bank();
        Inverter inverter = notes.job().inverter();
        Shore shore = notes.job().shore();
        Generator generator = notes.job().generator();
        FormRows rows = form().row(
                        "bank",
                        notes.say(
                                "pair",
                                notes.known(bank.chemistry()),
                                notes.figure(notes.it().figures().bank().energy())))
                .row(
                        "bank-fitted",
                        bank.block().fitted() == null
                                ? ""
                                : notes.words().word(bank.block().fitted()))
                .row("bank-serial", SheetNotes.text(bank.block().serial()))
                .row("inverter", named(inverter.name(), notes.known(inverter.continuous())))
                .row("inverter-serial", SheetNotes.text(inverter.serial()));
        List<String> chargers =
                notes.job().charging().stream().map(Charging::name).toList();
        rows.rowIf(!chargers.isEmpty(), "charging", notes.words().list(chargers));
        if (shore != null) {
            rows.row("shore", notes.known(shore.inlet()));
        }
        if (generator != null) {
            rows.row("generator", notes.known(generator.power()));
        }
        return rows.list();
    }

    private String named(@Nullable String name, String value) {
        return name == null ? value : notes.say("pair", name, value);
    }

    private List<String> papers() {
        List<String> papers = new ArrayList<>(List.of(
                notes.say("buyer.papers.guide"), notes.say("buyer.papers.manuals"), notes.say("buyer.papers.keys")));
        notes.job().fuses().stream()
                .filter(fuse -> fuse.spare() != null)
                .forEach(fuse -> papers.add(notes.say("buyer.papers.fuse", fuse.id(), SheetNotes.text(fuse.spare()))));
        return papers;
    }

    private List<Map<String, Object>> record() {
        RecordLink link = RecordLink.of(notes.it());
        return form().row("record.address", link.base() + link.folder())
                .row("record.code", link.code().toString())
                .rowIf(link.key().isPresent(), "record.seal-key", link.printedKey())
                .list();
    }

    private Map<String, Object> account(Account account) {
        return new Rows()
                .put("service", seller.blank(account.service()))
                .put("transfer", seller.blank(SheetNotes.text(account.transfer())))
                .map();
    }

    private List<String> release() {
        List<String> points = new ArrayList<>();
        if (!accounts.isEmpty()) {
            points.add(notes.say("buyer.release.accounts"));
        }
        points.addAll(List.of(
                notes.say("buyer.release.users"),
                notes.say("buyer.release.codes"),
                notes.say("buyer.release.contracts"),
                notes.say("buyer.release.insurer")));
        return points;
    }

    private List<String> first() {
        List<String> points = new ArrayList<>(List.of(
                notes.say("buyer.first.live"), notes.say("buyer.first.inspect"), notes.say("buyer.first.rehearse")));
        if (notes.job().shore() != null) {
            points.add(notes.say("buyer.first.lead"));
        }
        points.add(notes.say("buyer.first.codes"));
        return points;
    }

    private List<Map<String, Object>> due() {
        Edition edition = new Edition(notes.it(), notes.words());
        return DueDates.of(edition, edition).stream()
                .map(due -> new Rows()
                        .put("what", due.what())
                        .put("on", notes.words().date(due.first()))
                        .put("again", again(due.months()))
                        .map())
                .toList();
    }

    private String again(int months) {
        return months == 0 ? notes.say("none") : notes.say("buyer.again." + months);
    }
}
