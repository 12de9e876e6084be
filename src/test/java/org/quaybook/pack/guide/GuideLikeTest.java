package org.quaybook.pack.guide;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.quaybook.record.Edition;
import org.quaybook.record.PublicEdition;
import org.quaybook.render.PageFormat;
import org.quaybook.render.Templates;
import org.quaybook.text.Words;

/** The published guide has its chapters on the pages of the one handed over. */
class GuideLikeTest {

    private static final DemoJob DEMO = DemoJob.of("lantern-moth");

    private final Edition own = new Edition(DEMO.assessment(), Words.of("en-GB"));

    private static Guide guide(Edition edition) {
        return new Guide(edition, DEMO.branding(), Templates.builtIn());
    }

    private static List<Integer> chapters(GuidePages guide) {
        return guide.pages().ends("chapter").stream()
                .map(end -> end.firstPage())
                .toList();
    }

    @Test
    void isSetLikeTheOther() {
        GuidePages handedOver = guide(own).on(PageFormat.A5);
        GuidePages published = guide(PublicEdition.of(own).edition()).like(handedOver, PageFormat.A5);
        assertThat(chapters(published)).isEqualTo(chapters(handedOver));
        assertThat(published.close()).isEqualTo(handedOver.close());
    }

    @Test
    void isLaidOutByItselfWhereThatDoesNotSuit() {
        Guide published = guide(PublicEdition.of(own).edition());
        GuidePages byItself = published.on(PageFormat.A5);
        GuidePages other = new GuidePages(
                guide(own).on(PageFormat.LETTER).pages(), new CardSetting(CardDetail.FULL, "8.6"), Set.of());
        assertThat(chapters(other)).isNotEqualTo(chapters(byItself));
        assertThat(published.like(other, PageFormat.A5).pdf(List.of())).isEqualTo(byItself.pdf(List.of()));
    }
}
