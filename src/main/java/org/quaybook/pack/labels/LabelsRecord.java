package org.quaybook.pack.labels;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.quaybook.record.Branding;
import org.quaybook.record.RecordLink;
import org.quaybook.render.QrCode;

/** The two codes on the board: the link to the install record, and the vital facts for when there is no signal. */
final class LabelsRecord {

    private static final double LOGO_HEIGHT = 8;

    private static final String NUMBER = "([0-9]{1,9}(?:\\.[0-9]{1,9})?|\\.[0-9]{1,9})";
    private static final Pattern VIEW_BOX = Pattern.compile(
            "viewBox\\s*=\\s*[\"'][-+.\\d]+[ ,]+[-+.\\d]+[ ,]+" + NUMBER + "[ ,]+" + NUMBER + "\\s*[\"']");

    /** Widest and narrowest logo that gets room of its own proportions. */
    private static final double WIDEST = 12;

    private final LabelFacts facts;
    private final Branding branding;
    private final RecordLink link;

    LabelsRecord(LabelFacts facts, Branding branding, RecordLink link) {
        this.facts = facts;
        this.branding = branding;
        this.link = link;
    }

    List<LabelDesign> designs(String board) {
        return List.of(record(board), vital(board));
    }

    private LabelDesign record(String board) {
        List<LabelPart> beside = new ArrayList<>();
        logo().ifPresent(beside::add);
        beside.add(LabelPart.plain(facts.say("record.what")));
        beside.add(LabelPart.plain(address()));
        String phone = facts.it().installer().phone();
        beside.add(LabelPart.strong(facts.it().installer().firm() + (phone == null ? "" : "\n" + phone)));
        List<LabelPart> parts = new ArrayList<>();
        parts.add(new LabelPart.Scan(QrCode.of(link.address(), QrCode.Level.H), beside));
        parts.add(LabelPart.large(link.code().toString()));
        if (link.key().isPresent()) {
            parts.add(LabelPart.plain(facts.say("record.key")));
            parts.add(LabelPart.strong(link.printedKey()));
        }
        return LabelDesign.of(
                        "record",
                        LabelReason.RECORD,
                        LabelSpot.BOARD,
                        board,
                        LabelReading.HAND,
                        facts.say("record.title", facts.job().craft().name()))
                .with(parts.toArray(LabelPart[]::new));
    }

    /** Only a drawing: a picture made of pixels has no place on a label. */
    private Optional<LabelPart> logo() {
        if (!branding.logoName()
                .map(name -> name.toLowerCase(Locale.ROOT).endsWith(".svg"))
                .orElse(false)) {
            return Optional.empty();
        }
        String svg = new String(branding.logo(), StandardCharsets.UTF_8);
        return Optional.of(new LabelPart.Drawing(svg, LOGO_HEIGHT * proportion(svg), LOGO_HEIGHT));
    }

    /**
     * Width by height of the box that a drawing says it fills. 1 if it says none, or one that no label has room for: then it is
     * drawn smaller, in its own proportions.
     */
    static double proportion(String svg) {
        Matcher box = VIEW_BOX.matcher(svg);
        double proportion = box.find() ? Double.parseDouble(box.group(1)) / Double.parseDouble(box.group(2)) : 1;
        return proportion <= WIDEST && proportion >= 1 / WIDEST ? proportion : 1;
    }

    /** Broken after the host: a hyphen put in to break a line would become part of what is typed. */
    private String address() {
        String plain = link.base().replaceFirst("^https://", "");
        return plain + "\n" + link.folder();
    }

    private LabelDesign vital(String board) {
        List<String> lines = LabelVital.lines(facts);
        return LabelDesign.of(
                        "vital", LabelReason.VITAL, LabelSpot.BOARD, board, LabelReading.HAND, facts.say("vital.title"))
                .with(new LabelPart.Scan(
                        QrCode.of(LabelVital.payload(lines)),
                        List.of(LabelPart.plain(facts.say("vital.what")), LabelPart.strong(String.join("\n", lines)))));
    }
}
