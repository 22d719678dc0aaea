package boughwright.palette;

import boughwright.colour.Deficiency;
import boughwright.colour.HueTemplate;
import boughwright.colour.Oklab;
import boughwright.colour.Scheme;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;

/**
 * A reading as JSON; docs/colours.schema.json describes it.
 *
 * <p>Shares and chroma to four decimals, degrees, lightness and differences to two. Fields come in one order, so the same reading gives
 * the same bytes. It is worked out whenever it is asked for and is no part of a kept proposal.
 */
public final class PaletteJson {

    private static final ObjectMapper JSON = new ObjectMapper();

    private PaletteJson() {
    }

    /** Text with line breaks, ending in one. */
    public static String text(PaletteReading reading) {
        return of(reading).toPrettyString().replace("\r\n", "\n") + "\n";
    }

    static ObjectNode of(PaletteReading reading) {
        ObjectNode root = JSON.createObjectNode();
        root.putObject("wanted").put("main", share(reading.wanted().main())).put("second", share(reading.wanted().second())).put("spark", share(reading.wanted().spark()));
        root.set("palette", reading(reading.palette(), reading.members()));
        root.set("kit", reading(reading.kit(), reading.kit().tones()));
        return root;
    }

    /** @param tones with the shares to tell */
    private static ObjectNode reading(ColourReading reading, List<Tone> tones) {
        ObjectNode node = JSON.createObjectNode();
        ArrayNode colours = node.putArray("colours");
        tones.forEach(t -> colours.add(tone(t)));
        ObjectNode scheme = node.putObject("scheme").put("kind", word(reading.scheme().kind())).put("text", PaletteWords.of(reading.scheme()));
        ArrayNode groups = scheme.putArray("groups");
        for (Scheme.Group group : reading.scheme().groups()) {
            groups.addObject().put("part", group.part()).put("share", share(group.share()));
        }
        node.set("template", template(reading.template()));
        ArrayNode nearMisses = node.putArray("nearMisses");
        reading.nearMisses().forEach(p -> nearMisses.add(pair(p).put("text", PaletteWords.nearMiss(p))));
        ArrayNode confusions = node.putArray("confusions");
        for (Confusion confusion : reading.confusions()) {
            ObjectNode one = pair(confusion.pair()).put("seen", hundredths(confusion.seen())).put("deficiency", deficiency(confusion.sight()))
                    .put("text", PaletteWords.of(confusion));
            confusions.add(one);
        }
        return node;
    }

    private static ObjectNode tone(Tone tone) {
        Oklab lab = Oklab.of(tone.colour());
        return JSON.createObjectNode().put("id", tone.id()).put("name", tone.name()).put("colour", tone.colour().hex())
                .put("part", ColourReading.PARTS.get(tone.part())).put("share", share(tone.share())).put("lightness", hundredths(tone.lab().l()))
                .put("chroma", share(lab.chroma())).put("hue", hundredths(lab.hue()));
    }

    private static ObjectNode template(HueTemplate.Fit fit) {
        ObjectNode node = JSON.createObjectNode().put("letter", fit.template().letter()).put("fits", fit.fits()).put("distance", hundredths(fit.distance()));
        ArrayNode sectors = node.putArray("sectors");
        fit.sectors().forEach(s -> sectors.addObject().put("middle", hundredths(s.middle())).put("width", hundredths(s.width())));
        PaletteWords.of(fit).ifPresent(text -> node.put("text", text));
        return node;
    }

    private static ObjectNode pair(Pair pair) {
        return JSON.createObjectNode().put("one", pair.one().id()).put("other", pair.other().id()).put("difference", hundredths(pair.difference()));
    }

    private static String deficiency(Deficiency sight) {
        return switch (sight.cone()) {
            case LONG -> "protanopia";
            case MIDDLE -> "deuteranopia";
            case SHORT -> "tritanopia";
        };
    }

    private static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static BigDecimal share(double value) {
        return rounded(value, 4);
    }

    private static BigDecimal hundredths(double value) {
        return rounded(value, 2);
    }

    private static BigDecimal rounded(double value, int decimals) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP).stripTrailingZeros();
        return rounded.scale() < 0 ? rounded.setScale(0) : rounded;
    }
}
