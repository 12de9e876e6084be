package org.quaybook;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import org.verapdf.core.VeraPDFException;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;

/** What veraPDF, the reference validator of the PDF Association and the Open Preservation Foundation, finds in a PDF. */
public final class Conformance {

    static {
        VeraGreenfieldFoundryProvider.initialise();
    }

    private Conformance() {}

    /** Faults against PDF/A-3a (ISO 19005-3); none if it conforms. */
    public static List<String> faultsAsArchive(byte[] pdf) {
        return faults(pdf, PDFAFlavour.PDFA_3_A);
    }

    /** Faults against PDF/UA-1 (ISO 14289-1) as far as a machine can find them; none if there are none. */
    public static List<String> faultsForListening(byte[] pdf) {
        return faults(pdf, PDFAFlavour.PDFUA_1);
    }

    private static synchronized List<String> faults(byte[] pdf, PDFAFlavour flavour) {
        Locale tests = Locale.getDefault();
        // veraPDF compares the names of types in the small letters of the default locale: "Integer" has none in
        // Turkish.
        Locale.setDefault(Locale.ROOT);
        try (PDFAParser parser = Foundries.defaultInstance().createParser(new ByteArrayInputStream(pdf), flavour);
                PDFAValidator validator = Foundries.defaultInstance().createValidator(flavour, false)) {
            return validator.validate(parser).getTestAssertions().stream()
                    .filter(assertion -> assertion.getStatus() != TestAssertion.Status.PASSED)
                    .map(Conformance::told)
                    .distinct()
                    .sorted()
                    .toList();
        } catch (VeraPDFException | IOException e) {
            throw new IllegalStateException("veraPDF could not read the file", e);
        } finally {
            Locale.setDefault(tests);
        }
    }

    private static String told(TestAssertion assertion) {
        return "%s-%d: %s (%s)"
                .formatted(
                        assertion.getRuleId().getClause(),
                        assertion.getRuleId().getTestNumber(),
                        assertion.getMessage(),
                        assertion.getLocation().getContext());
    }
}
