package fairflame.document;

import fairflame.invoice.Invoice;
import fairflame.quote.Party;
import fairflame.quote.TaxAmount;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.joda.money.Money;

/**
 * An invoice or credit note as UBL 2.1 (OASIS, ISO/IEC 19845) under the rules of EN 16931-1. A credit note carries
 * positive amounts here, though the record that it is made from carries negative ones. How sales tax fits in:
 * docs/formats/ubl.md.
 */
public final class UblInvoice {
    private static final String UBL = "urn:oasis:names:specification:ubl:schema:xsd:";
    private static final int ADDRESS_LINES = 2;

    private final Invoice invoice;
    private final UblSeller seller;
    private final boolean credit;
    private final XmlText xml;

    private UblInvoice(Invoice invoice, UblSeller seller) {
        this.invoice = invoice;
        this.seller = seller;
        this.credit = invoice.kind() == Invoice.Kind.CREDIT;
        var root = credit ? "CreditNote" : "Invoice";
        this.xml = new XmlText(
                root,
                Map.of(
                        "",
                        UBL + root + "-2",
                        "cac",
                        UBL + "CommonAggregateComponents-2",
                        "cbc",
                        UBL + "CommonBasicComponents-2"));
    }

    /** The whole document, encoded as UTF-8 when it is stored: the same text for the same invoice. */
    public static String write(Invoice invoice, UblSeller seller) {
        return new UblInvoice(invoice, seller).write();
    }

    private String write() {
        head();
        references();
        xml.holding("cac:AccountingSupplierParty", () -> party(invoice.seller(), true));
        xml.holding("cac:AccountingCustomerParty", () -> party(invoice.customer(), false));
        xml.holding("cac:Delivery", () -> {
            xml.leaf("cbc:ActualDeliveryDate", invoice.supplied().toString());
            xml.holding("cac:DeliveryLocation", () -> address("cac:Address", invoice.site()));
        });
        xml.holding("cac:PaymentTerms", () -> xml.leaf("cbc:Note", "Due " + invoice.due()));
        new UblTotals(invoice, xml, this::amount).write();
        var lines = new UblLines(invoice, xml);
        invoice.lines().forEach(lines::write);
        return xml.done();
    }

    private void head() {
        xml.leaf("cbc:CustomizationID", "urn:cen.eu:en16931:2017");
        xml.leaf("cbc:ID", invoice.number());
        xml.leaf("cbc:IssueDate", invoice.issued().toString());
        if (credit) {
            // UNCL 1001: 381 credit note.
            xml.leaf("cbc:CreditNoteTypeCode", "381");
        } else {
            xml.leaf("cbc:DueDate", invoice.due().toString());
            // UNCL 1001: 380 commercial invoice, 326 partial invoice.
            xml.leaf("cbc:InvoiceTypeCode", invoice.kind() == Invoice.Kind.PART ? "326" : "380");
        }
        // A credit note of UBL 2.1 may carry several notes as well; EN 16931 takes them as one group (BG-1).
        notes().forEach(note -> xml.leaf("cbc:Note", note));
        xml.leaf("cbc:DocumentCurrencyCode", invoice.currency().getCode());
    }

    private List<String> notes() {
        var notes = new ArrayList<String>();
        if (!invoice.totals().taxes().isEmpty()) {
            notes.add("Sales tax by authority: "
                    + invoice.totals().taxes().stream().map(this::layer).collect(Collectors.joining("; ")));
        }
        notes.addAll(invoice.notes());
        return notes;
    }

    private String layer(TaxAmount tax) {
        return tax.name() + " " + tax.rate() + " on " + amount(tax.base()) + " = " + amount(tax.amount());
    }

    private void references() {
        if (credit) {
            xml.holding(
                    "cac:BillingReference",
                    () -> xml.holding("cac:InvoiceDocumentReference", () -> xml.leaf("cbc:ID", invoice.corrects())));
        }
        xml.holding(
                "cac:ContractDocumentReference",
                () -> xml.leaf("cbc:ID", invoice.quote() + " revision " + invoice.revision()));
    }

    private void party(Party party, boolean isSeller) {
        xml.holding("cac:Party", () -> {
            address("cac:PostalAddress", party);
            if (isSeller) {
                xml.holding("cac:PartyTaxScheme", () -> {
                    xml.leaf("cbc:CompanyID", seller.taxRegistration());
                    // Any scheme but "VAT" makes it the seller's local tax registration (BT-32).
                    xml.holding("cac:TaxScheme", () -> xml.leaf("cbc:ID", "LOC"));
                });
            }
            xml.holding("cac:PartyLegalEntity", () -> {
                xml.leaf("cbc:RegistrationName", party.name());
                if (isSeller) {
                    // BR-CO-26 asks for a number that names the seller.
                    xml.leaf("cbc:CompanyID", identifier());
                }
            });
            contact(party);
        });
    }

    private String identifier() {
        return invoice.sellerLicence().isBlank() ? seller.taxRegistration() : invoice.sellerLicence();
    }

    private void contact(Party party) {
        if (!party.phone().isBlank() || !party.email().isBlank()) {
            xml.holding("cac:Contact", () -> {
                xml.leaf("cbc:Telephone", party.phone());
                xml.leaf("cbc:ElectronicMail", party.email());
            });
        }
    }

    /** Lines as printed: which one is town or postal code is not known, so none is called so. */
    private void address(String element, Party party) {
        var lines = party.address();
        xml.holding(element, () -> {
            xml.leaf("cbc:StreetName", lines.isEmpty() ? "" : lines.get(0));
            xml.leaf("cbc:AdditionalStreetName", lines.size() < ADDRESS_LINES ? "" : lines.get(1));
            if (lines.size() > ADDRESS_LINES) {
                xml.holding(
                        "cac:AddressLine",
                        () -> xml.leaf("cbc:Line", String.join(", ", lines.subList(ADDRESS_LINES, lines.size()))));
            }
            xml.holding("cac:Country", () -> xml.leaf("cbc:IdentificationCode", seller.country()));
        });
    }

    /** Plain digits; the sign is turned on a credit note. */
    private String amount(Money money) {
        var shown = credit ? money.negated() : money;
        return shown.getAmount().toPlainString();
    }
}
