package boughwright.proposal;

import boughwright.kit.KitLine;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What the stock room picks, shelf by shelf; one row for each product, owned pieces left out. */
public final class PickList {

    /**
     * @param pieces to take home, of which the packs may hold more
     * @param packs to pick, at least 1
     */
    public record Row(String shelf, String sku, String name, int pieces, int packs, int packSize, String unitPrice, String price) {
    }

    private static final CsvSchema COLUMNS = CsvSchema.builder().addColumn("shelf").addColumn("sku").addColumn("name").addColumn("pieces")
            .addColumn("packs").addColumn("packSize").addColumn("unitPrice").addColumn("price").build().withHeader();

    private PickList() {
    }

    /** The lines of each product together, owned ones too, in the order in which one walks past the shelves. */
    public static List<List<KitLine>> byShelf(Proposal proposal) {
        Map<String, List<KitLine>> bySku = new LinkedHashMap<>();
        proposal.kit().lines().forEach(l -> bySku.computeIfAbsent(l.sku(), s -> new ArrayList<>()).add(l));
        return bySku.values().stream()
                .sorted(Comparator.comparing((List<KitLine> lines) -> lines.get(0).shelf(), ShelfOrder.WALK)
                        .thenComparing(lines -> lines.get(0).name()).thenComparing(lines -> lines.get(0).sku()))
                .toList();
    }

    /** What is bought, in the order of {@link #byShelf}. */
    public static List<Row> rows(Proposal proposal) {
        return byShelf(proposal).stream().map(PickList::row).filter(r -> r.packs() > 0).toList();
    }

    private static Row row(List<KitLine> lines) {
        KitLine first = lines.get(0);
        int packs = lines.stream().mapToInt(KitLine::packs).sum();
        int pieces = lines.stream().mapToInt(l -> l.quantity() - l.owned()).sum();
        return new Row(first.shelf(), first.sku(), first.name(), pieces, packs, first.packSize(), first.unitPrice().decimal(),
                first.unitPrice().times(packs).decimal());
    }

    /** CSV (RFC 4180) with a header. */
    public static String csv(Proposal proposal) {
        try {
            return new CsvMapper().writer(COLUMNS).writeValueAsString(rows(proposal));
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(e);
        }
    }
}
