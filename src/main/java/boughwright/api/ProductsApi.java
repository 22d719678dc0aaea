package boughwright.api;

import boughwright.brief.Word;
import boughwright.catalogue.Product;
import boughwright.catalogue.ProductSearch;
import boughwright.catalogue.Traits.Family;
import boughwright.catalogue.Traits.Finish;
import boughwright.catalogue.Traits.Level;
import boughwright.catalogue.Traits.Texture;
import boughwright.colour.Srgb;
import boughwright.drawing.DressedTree;
import boughwright.intake.CatalogueFile;
import boughwright.intake.Format;
import boughwright.needs.Role;
import boughwright.publishing.ShopDoor;
import boughwright.shelf.Photos;
import boughwright.shelf.Shelf;
import boughwright.text.Text;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** What the shop sells, found by what it is or by the eye. */
@RestController
class ProductsApi {

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final MediaType SVG = MediaType.parseMediaType("image/svg+xml;charset=UTF-8");
    private static final int USUAL = 50;
    private static final int MOST = 500;
    private static final int PICTURE = 240;
    private static final Set<String> KNOWN = Set.of("text", "role", "look", "family", "texture", "finish", "level", "stock", "near", "order", "from", "most");

    private final ShopDoor shop;
    private final Shelf shelf;
    private final Photos photos;

    ProductsApi(ShopDoor shop, Shelf shelf, Photos photos) {
        this.shop = shop;
        this.shelf = shelf;
        this.photos = photos;
    }

    /** A parameter whose value nobody knows. */
    private static final class Unknown extends RuntimeException {

        private static final long serialVersionUID = 1;
        private final transient String field;
        private final transient String mend;

        Unknown(String field, String mend) {
            super(field, null, false, false);
            this.field = field;
            this.mend = mend;
        }
    }

    @Operation(summary = "Products on sale: text, role, look, family, texture, finish, level, stock (in-stock, low, none), near (#rrggbb: the nearest "
            + "first, with the CIEDE2000 distance), order, from (0), most (50, at most 500)")
    @ApiResponse(responseCode = "200", description = "How many are like that, and those asked for, as in the catalogue’s JSON")
    @ApiResponse(responseCode = "400", description = "A parameter that nobody knows, with what may stand there", content = @Content(
            mediaType = "application/problem+json"))
    @GetMapping(path = "/api/products", produces = MediaType.APPLICATION_JSON_VALUE)
    ResponseEntity<?> products(@Parameter(hidden = true) @RequestParam Map<String, String> asked) {
        // The shelf is there once the shop is open.
        shop.designer();
        try {
            asked.keySet().stream().filter(k -> !KNOWN.contains(k)).findFirst().ifPresent(k -> {
                throw new Unknown(k, Text.of("api.products.unknown", String.join(", ", new TreeSet<>(KNOWN))));
            });
            ProductSearch search = new ProductSearch(asked.getOrDefault("text", ""), word(asked, "role", Role.class), asked.getOrDefault("look", ""),
                    word(asked, "family", Family.class), word(asked, "texture", Texture.class), word(asked, "finish", Finish.class),
                    word(asked, "level", Level.class), word(asked, "stock", ProductSearch.Stock.class).orElse(ProductSearch.Stock.ANY), near(asked),
                    word(asked, "order", ProductSearch.Order.class).orElse(ProductSearch.Order.SKU));
            int from = number(asked, "from", 0, Integer.MAX_VALUE);
            int most = number(asked, "most", USUAL, MOST);
            List<ProductSearch.Found> found = search.in(shelf.onSale());
            List<ProductSearch.Found> page = found.stream().skip(from).limit(most).toList();
            ObjectNode answer = JSON.createObjectNode().put("found", found.size());
            ArrayNode products = listed(page.stream().map(ProductSearch.Found::product).toList());
            if (search.near().isPresent()) {
                for (int i = 0; i < page.size(); i++) {
                    ((ObjectNode) products.get(i)).put("distance", BigDecimal.valueOf(page.get(i).distance()).setScale(2, RoundingMode.HALF_EVEN));
                }
            }
            answer.set("products", products);
            return ResponseEntity.ok(answer);
        } catch (Unknown unknown) {
            return ProposalsApi.problem(HttpStatus.BAD_REQUEST, unknown.field, Text.of("api.products.title"), unknown.mend);
        }
    }

    private static <W extends Enum<W> & Word> Optional<W> word(Map<String, String> asked, String field, Class<W> choices) {
        String text = asked.getOrDefault(field, "");
        Optional<W> word = Word.read(choices, text);
        if (word.isEmpty() && !text.isEmpty()) {
            throw new Unknown(field, Text.of("catalogue.word", String.join(", ", Word.words(choices))));
        }
        return word;
    }

    private static Optional<Srgb> near(Map<String, String> asked) {
        String text = asked.getOrDefault("near", "");
        Optional<Srgb> near = Srgb.read(text);
        if (near.isEmpty() && !text.isEmpty()) {
            throw new Unknown("near", Text.of("catalogue.colour"));
        }
        return near;
    }

    private static int number(Map<String, String> asked, String field, int usual, int most) {
        String text = asked.getOrDefault(field, String.valueOf(usual));
        if (!text.matches("\\d{1,9}") || Integer.parseInt(text) > most) {
            throw new Unknown(field, Text.of("catalogue.whole", "0", String.valueOf(most)));
        }
        return Integer.parseInt(text);
    }

    private static ArrayNode listed(List<Product> products) {
        try {
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            CatalogueFile.write(Format.JSON, products, bytes);
            return (ArrayNode) JSON.readTree(bytes.toByteArray()).required("products");
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    @Operation(summary = "One product, also one that has left the range")
    @ApiResponse(responseCode = "200", description = "The product as in the catalogue’s JSON, and whether it is sold")
    @ApiResponse(responseCode = "404", description = "Nobody knows it", content = @Content(mediaType = "application/problem+json"))
    @GetMapping("/api/product")
    ResponseEntity<?> product(@RequestParam String sku) {
        shop.designer();
        return shelf.catalogue().product(sku).<ResponseEntity<?>>map(p -> ResponseEntity.ok(((ObjectNode) listed(List.of(p)).get(0)).put("sold", shelf.sells(sku))))
                .orElseGet(() -> unknown(sku));
    }

    @Operation(summary = "A product’s drawing")
    @ApiResponse(responseCode = "200", description = "The drawing", content = @Content(mediaType = "image/svg+xml"))
    @GetMapping("/api/product/drawing.svg")
    ResponseEntity<?> drawing(@RequestParam String sku) {
        shop.designer();
        return shelf.catalogue().product(sku).<ResponseEntity<?>>map(p -> ResponseEntity.ok().contentType(SVG).body(DressedTree.swatch(p, PICTURE)))
                .orElseGet(() -> unknown(sku));
    }

    @Operation(summary = "A product’s photo, where staff have kept one")
    @ApiResponse(responseCode = "200", description = "The photo", content = @Content(mediaType = "image/jpeg"))
    @ApiResponse(responseCode = "404", description = "There is none", content = @Content(mediaType = "application/problem+json"))
    @GetMapping("/api/product/photo.jpg")
    ResponseEntity<?> photo(@RequestParam String sku) {
        return photos.of(sku).<ResponseEntity<?>>map(bytes -> ResponseEntity.ok().contentType(MediaType.IMAGE_JPEG).body(bytes)).orElseGet(() -> unknown(sku));
    }

    private static ResponseEntity<?> unknown(String sku) {
        return ProposalsApi.problem(HttpStatus.NOT_FOUND, "sku", Text.of("api.products.none.title"), Text.of("api.products.none", sku));
    }
}
