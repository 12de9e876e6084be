package org.quaybook.render;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.quaybook.diag.Diagnostic;

/** What lies under a text, and that a text which cannot be told from it is refused. */
class GroundTest {

    private static final Box TEXT = new Box(5, 5, 20, 5);
    private static final Colour YELLOW = Colour.of("#f9a800");

    private static void print(Colour ink, Mark... below) {
        List<Mark> marks = new ArrayList<>(List.of(below));
        marks.add(TextBlock.of(TEXT, "Off", TextStyle.of(Face.BOLD, 3, 3).in(ink)));
        LabelSheet.toPdf(
                List.of(new Label("x", 40, 20, marks)),
                Sheet.A4,
                new SheetLines("", "", ""),
                new DocumentInfo("x", "", "", "en", LocalDate.of(2026, 3, 1)));
    }

    @Test
    void theUppermostPanelUnderAllOfTheTextIsItsGround() {
        Panel all = Panel.filled(new Box(0, 0, 40, 20), Colour.BLACK);
        Panel bar = Panel.filled(new Box(5, 5, 20, 5), YELLOW);
        assertThat(Ground.of(TEXT, List.of())).containsExactly(Colour.WHITE);
        assertThat(Ground.of(TEXT, List.of(all, bar))).containsExactly(YELLOW);
        assertThat(Ground.of(TEXT, List.of(bar, all))).containsExactly(Colour.BLACK);
    }

    @Test
    void whatReachesUnderAPartCountsToo() {
        Panel all = Panel.filled(new Box(0, 0, 40, 20), Colour.BLACK);
        Panel half = Panel.filled(new Box(0, 0, 10, 20), YELLOW);
        Panel beside = Panel.filled(new Box(25, 0, 10, 20), YELLOW);
        Panel rule = Panel.filled(new Box(0, 8, 40, 0.2), YELLOW);
        Panel frame = Panel.outlined(new Box(0, 0, 40, 20), YELLOW, 1);
        assertThat(Ground.of(TEXT, List.of(all, half, beside, rule, frame))).containsExactly(YELLOW, Colour.BLACK);
    }

    /** WCAG 2.2, 1.4.3: 4.5 at least. White on orange #d05d29 has 3.98, black on it 5.28 (computed by its formula). */
    @Test
    void textThatCannotBeToldFromItsGroundIsRefused() {
        Colour orange = Colour.of("#d05d29");
        Panel panel = Panel.filled(new Box(0, 0, 40, 20), orange);
        print(Colour.BLACK, panel);
        assertThatThrownBy(() -> print(Colour.WHITE, panel)).isInstanceOfSatisfying(RenderException.class, e -> {
            assertThat(e.diagnostics()).hasSize(1);
            Diagnostic refused = e.diagnostics().get(0);
            assertThat(refused.message().key()).isEqualTo(RenderMessage.LABEL_CONTRAST_LOW);
            assertThat(refused.message().arguments()).startsWith("x", "Off", "#ffffff", "#d05d29");
        });
    }

    /** The worst place counts: white letters that reach beyond their black bar are lost on the stock. */
    @Test
    void theWorstPlaceCounts() {
        Panel half = Panel.filled(new Box(0, 0, 15, 20), Colour.BLACK);
        assertThatThrownBy(() -> print(Colour.WHITE, half)).isInstanceOf(RenderException.class);
    }
}
