package hornwright.desk.paper;

import java.io.ByteArrayInputStream;
import java.util.List;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;
import org.verapdf.pdfa.results.ValidationResult;

/** veraPDF's verdict on a file; empty means it complies. */
final class Validator {
    static {
        VeraGreenfieldFoundryProvider.initialise();
    }

    private Validator() {}

    static List<String> complaints(byte[] pdf, PDFAFlavour flavour) throws Exception {
        try (PDFAParser parser = Foundries.defaultInstance().createParser(new ByteArrayInputStream(pdf), flavour);
                PDFAValidator validator = Foundries.defaultInstance().createValidator(flavour, false)) {
            ValidationResult result = validator.validate(parser);
            List<String> failed = result.getTestAssertions().stream()
                    .filter(assertion -> assertion.getStatus() != TestAssertion.Status.PASSED)
                    .map(assertion -> assertion.getRuleId().getClause() + " " + assertion.getMessage())
                    .distinct()
                    .toList();
            return result.isCompliant() ? List.of() : failed;
        }
    }
}
