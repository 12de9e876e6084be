package org.quaybook.pack.labels;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import org.quaybook.render.Fitting;
import org.quaybook.render.Label;
import org.quaybook.render.Panel;
import org.quaybook.render.Sheet;
import org.quaybook.render.TextBlock;
import org.quaybook.render.TextFitter;

/** The placing map. What it must show is this project's own rule; there is no standard for it. */
class LabelsMapTest {

    private static final Sheet PAPER = Sheet.A4;

    @TempDir
    Path folder;

    private static List<String> texts(List<Label> pieces) {
        List<String> texts = new ArrayList<>();
        pieces.forEach(piece -> piece.marks().stream()
                .filter(TextBlock.class::isInstance)
                .map(TextBlock.class::cast)
                .forEach(text -> texts.addAll(text.paragraphs())));
        return texts;
    }

    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void everyLabelStandsOnItOnceWithABoxToTick(String name) {
        standsOnItOnce(DemoJob.demo(name));
    }

    /** More labels at one place than a sheet holds: the place goes on over several sheets, which say so. */
    @Test
    void aPlaceOfVeryManyLabelsGoesOn() {
        List<String> texts = standsOnItOnce(Grown.sockets(150, folder));
        String place = texts.stream()
                .filter(text -> text.endsWith(" · deckhouse: beside the socket · 1 of 2"))
                .findFirst()
                .orElseThrow();
        String number = place.substring(0, place.indexOf(' '));
        assertThat(texts).containsSubsequence(place, number + " · deckhouse: beside the socket · 2 of 2");
    }

    /** Where languages make one word of several, a title may be wider than its small picture. */
    @Test
    void aLongWordWidensItsPlace() {
        DemoJob job = DemoJob.changed("hut-seventeen", folder, "Chainsaw chargers", "Kettensägen-Ladegeräte");
        List<LabelSetter.Sized> sized = job.sized();
        List<Label> pieces = new LabelsMap(job.words(), new LabelsPlacing(job.words()))
                .pieces(
                        sized.stream().map(one -> one.design().note()).toList(),
                        sized.stream().map(LabelSetter.Sized::label).toList(),
                        PAPER.room());
        assertThat(texts(pieces)).anyMatch(text -> text.endsWith(" · Kettensägen-Ladegeräte"));
        assertThat(pieces.stream()
                        .flatMap(piece -> piece.marks().stream())
                        .filter(TextBlock.class::isInstance)
                        .map(TextBlock.class::cast))
                .allSatisfy(text -> assertThat(TextFitter.fit(text)).isInstanceOf(Fitting.Fits.class));
    }

    private static List<String> standsOnItOnce(DemoJob job) {
        List<LabelSetter.Sized> sized = job.sized();
        List<LabelNote> notes = sized.stream().map(one -> one.design().note()).toList();
        List<Label> labels = sized.stream().map(LabelSetter.Sized::label).toList();
        List<Label> pieces =
                new LabelsMap(job.words(), new LabelsPlacing(job.words())).pieces(notes, labels, PAPER.room());
        assertThat(texts(pieces))
                .containsAll(IntStream.range(0, notes.size())
                        .mapToObj(i -> (i + 1) + " · " + notes.get(i).title())
                        .toList());
        long boxes = pieces.stream()
                .flatMap(piece -> piece.marks().stream())
                .filter(mark -> mark instanceof Panel panel
                        && panel.fill() == null
                        && Math.abs(panel.box().width() - 3.2) < 1e-9
                        && Math.abs(panel.box().height() - 3.2) < 1e-9)
                .count();
        assertThat(boxes).isEqualTo(notes.size());
        assertThat(pieces).allSatisfy(piece -> {
            assertThat(piece.height()).isLessThanOrEqualTo(PAPER.room().height());
            assertThat(piece.cut()).isFalse();
        });
        return texts(pieces);
    }

    /** Walked from the outside to the battery, each place once. */
    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void placesFollowTheWalk(String name) {
        DemoJob job = DemoJob.demo(name);
        List<LabelSetter.Sized> sized = job.sized();
        LabelsPlacing placing = new LabelsPlacing(job.words());
        List<LabelNote> notes = sized.stream().map(one -> one.design().note()).toList();
        List<String> walk = notes.stream()
                .sorted(java.util.Comparator.comparing(LabelNote::spot))
                .map(placing::where)
                .distinct()
                .toList();
        List<Label> pieces = new LabelsMap(job.words(), placing)
                .pieces(notes, sized.stream().map(LabelSetter.Sized::label).toList(), PAPER.room());
        List<String> stops = IntStream.range(0, walk.size())
                .mapToObj(i -> (i + 1) + " · " + walk.get(i))
                .toList();
        assertThat(texts(pieces)).containsSubsequence(stops);
    }
}
