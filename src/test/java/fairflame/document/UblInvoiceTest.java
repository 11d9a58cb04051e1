package fairflame.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.helger.diver.api.coord.DVRCoordinate;
import com.helger.phive.api.execute.ValidationExecutionManager;
import com.helger.phive.api.executorset.ValidationExecutorSetRegistry;
import com.helger.phive.api.result.ValidationResultList;
import com.helger.phive.api.validity.IValidityDeterminator;
import com.helger.phive.en16931.EN16931Validation;
import com.helger.phive.xml.source.IValidationSourceXML;
import com.helger.phive.xml.source.ValidationSourceXML;
import com.helger.xml.serialize.read.DOMReader;
import fairflame.Refusal;
import fairflame.invoice.Crediting;
import fairflame.invoice.Invoice;
import fairflame.invoice.InvoiceNumber;
import fairflame.invoice.Issue;
import fairflame.invoice.Payment;
import fairflame.invoice.RandomInvoices;
import fairflame.invoice.SplitPapers;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

/**
 * Against the schemas of UBL 2.1 (OASIS) and the rules of EN 16931-1 for UBL as CEN/TC 434 publishes them, version
 * 1.3.15, run by phive-rules-en16931 4.2.3.
 */
class UblInvoiceTest {
    private static final long SEED = 20260316;
    private static final UblSeller SHOP = new UblSeller("US", "ST-550-1120");
    private static final ValidationExecutorSetRegistry<IValidationSourceXML> RULES = rules();

    private static ValidationExecutorSetRegistry<IValidationSourceXML> rules() {
        var registry = new ValidationExecutorSetRegistry<IValidationSourceXML>();
        EN16931Validation.initEN16931(registry);
        return registry;
    }

    private static String faults(String xml) {
        var document = DOMReader.readXMLDOM(xml);
        assertThat(document).as("well-formed").isNotNull();
        var root = document.getDocumentElement().getLocalName();
        DVRCoordinate set = root.equals("CreditNote")
                ? EN16931Validation.VID_UBL_CREDIT_NOTE_1315
                : EN16931Validation.VID_UBL_INVOICE_1315;
        var result = new ValidationResultList(null);
        ValidationExecutionManager.executeValidation(
                IValidityDeterminator.createDefault(),
                RULES.getOfID(set),
                ValidationSourceXML.create("test", document),
                result,
                Locale.US);
        return result.getAllErrors().stream()
                .map(error -> error.getErrorID() + " " + error.getErrorText(Locale.US))
                .collect(Collectors.joining("\n"));
    }

    @Test
    void everyInvoiceAndCreditNoteIsValid() {
        var invoices = new RandomInvoices(new Random(SEED));
        var kinds = EnumSet.noneOf(Invoice.Kind.class);
        var layers = new HashSet<Integer>();
        var shapes = new TreeMap<String, Integer>();
        var discounts = 0;
        for (int i = 0; i < 210; i++) {
            var invoice = invoices.next(i);
            assertThat(faults(UblInvoice.write(invoice, SHOP)))
                    .as("seed %d case %d: %s", SEED, i, invoice)
                    .isEmpty();
            kinds.add(invoice.kind());
            layers.add(invoice.taxRule().layers().size());
            discounts += invoice.totals().discount().isZero() ? 0 : 1;
            shapes(invoice).forEach(shape -> shapes.merge(shape, 1, Integer::sum));
        }
        assertThat(kinds).hasSize(3);
        assertThat(layers).contains(0, 1, 2, 3, 4);
        assertThat(discounts).isGreaterThan(40);
        // Each of these at least thrice: what is not among the papers is not held against the rules.
        assertThat(shapes)
                .containsKeys("CREDIT 1 layers", "CREDIT 2 layers", "CREDIT 3 layers", "CREDIT 4 layers")
                .containsKeys("CREDIT discounted", "FULL discounted", "PART discounted", "FULL prepaid", "PART prepaid")
                .containsKeys("rounded DOWN", "rounded NEAREST", "tax by line", "tax on document", "combined")
                .allSatisfy((shape, times) -> assertThat(times).as(shape).isGreaterThan(2));
    }

    private static List<String> shapes(Invoice invoice) {
        var rule = invoice.taxRule();
        var shapes = new ArrayList<String>();
        if (!rule.layers().isEmpty()) {
            shapes.add(invoice.kind() + " " + rule.layers().size() + " layers");
        }
        if (!invoice.totals().discount().isZero()) {
            shapes.add(invoice.kind() + " discounted");
        }
        if (!invoice.paid().isZero()) {
            shapes.add(invoice.kind() + " prepaid");
        }
        shapes.add("rounded " + rule.rounding());
        shapes.add(rule.perItem() ? "tax by line" : "tax on document");
        if (rule.combined()) {
            shapes.add("combined");
        }
        return shapes;
    }

    @Test
    void depositsOnPartBillsAndPartialCreditsAreValid() {
        var seed = 909L;
        var random = new Random(seed);
        int prepaid = 0;
        int partial = 0;
        for (int i = 0; i < 10; i++) {
            for (var paper : SplitPapers.of(random)) {
                if (paper.kind() == Invoice.Kind.CREDIT
                        || !paper.totals().total().isPositive()) {
                    continue;
                }
                var deposit = paper.totals().total().dividedBy(3, RoundingMode.DOWN);
                var paid = paper.paidBy(List.of(new Payment("P-2026-0001", paper.issued(), deposit, "card", "", true)));
                assertThat(faults(UblInvoice.write(paid, SHOP)))
                        .as("seed %d case %d: %s", seed, i, paid)
                        .isEmpty();
                prepaid += deposit.isZero() ? 0 : 1;
                var line = paper.lines().get(random.nextInt(paper.lines().size()));
                var back = line.quantity().multiply(new BigDecimal("0.37"));
                var issue =
                        new Issue(InvoiceNumber.parse("C-2026-0001"), paper.issued(), paper.supplied(), paper.due());
                var credit = Crediting.partial(issue, paper, List.of(), Map.of(line.id(), back), "not all was needed");
                assertThat(faults(UblInvoice.write(credit, SHOP)))
                        .as("seed %d case %d: %s", seed, i, credit)
                        .isEmpty();
                partial++;
            }
        }
        assertThat(prepaid).isGreaterThan(9);
        assertThat(partial).isGreaterThan(9);
    }

    @Test
    void partBillsAndCreditsOfSignedWorkAreValid() {
        var seed = 326L;
        var random = new Random(seed);
        for (int i = 0; i < 12; i++) {
            for (var paper : SplitPapers.of(random)) {
                assertThat(faults(UblInvoice.write(paper, SHOP)))
                        .as("seed %d case %d: %s", seed, i, paper)
                        .isEmpty();
            }
        }
    }

    @Test
    void theRulesFindATotalThatIsACentOff() {
        var invoice = new RandomInvoices(new Random(5)).next(1);
        var xml = UblInvoice.write(invoice, SHOP);
        var payable = xml.replaceFirst("(<cbc:PayableAmount[^>]*>)[^<]*", "$199999.99");
        assertThat(faults(payable)).contains("BR-CO-16");
    }

    @Test
    void theAmountsOfTheInvoiceStandInTheDocument() {
        var random = new RandomInvoices(new Random(11));
        for (int i = 0; i < 50; i++) {
            var invoice = random.next(i);
            var sign = invoice.kind() == Invoice.Kind.CREDIT ? -1 : 1;
            var root = DOMReader.readXMLDOM(UblInvoice.write(invoice, SHOP)).getDocumentElement();
            assertThat(first(root, "TaxInclusiveAmount"))
                    .isEqualTo(invoice.totals()
                            .total()
                            .multipliedBy(sign)
                            .getAmount()
                            .toPlainString());
            assertThat(first(
                            (Element)
                                    root.getElementsByTagNameNS("*", "TaxTotal").item(0),
                            "TaxAmount"))
                    .isEqualTo(invoice.totals()
                            .tax()
                            .multipliedBy(sign)
                            .getAmount()
                            .toPlainString());
            assertThat(first(root, "PayableAmount"))
                    .isEqualTo(invoice.balance().multipliedBy(sign).getAmount().toPlainString());
        }
    }

    private static String first(Element element, String name) {
        return element.getElementsByTagNameNS("*", name).item(0).getTextContent();
    }

    @Test
    void namesOfCustomersAreEscapedAndControlCharactersLeftOut() {
        var invoice = new RandomInvoices(new Random(3)).next(1);
        var xml = UblInvoice.write(invoice, SHOP);
        assertThat(xml).contains("Rosa &amp; Ned &lt;Okafor");
        assertThat(new XmlText("a", java.util.Map.of()).leaf("b", "x\u0001y").done())
                .contains("<b>xy</b>");
    }

    @Test
    void refusesASellerWithoutRegistrationOrCountry() {
        assertThatThrownBy(() -> new UblSeller("US", " ")).isInstanceOf(Refusal.class);
        assertThatThrownBy(() -> new UblSeller("usa", "1")).isInstanceOf(Refusal.class);
    }
}
