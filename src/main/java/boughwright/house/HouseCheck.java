package boughwright.house;

import boughwright.brief.Look;
import boughwright.brief.Palette;
import boughwright.brief.Word;
import boughwright.catalogue.Traits;
import boughwright.colour.Lab;
import boughwright.house.Complaint.Weight;
import boughwright.measure.Units;
import boughwright.needs.HouseNumber;
import boughwright.needs.HouseNumber.Guard;
import boughwright.needs.HouseWords;
import boughwright.needs.Trait;
import boughwright.rulebook.Asked;
import boughwright.rulebook.NumberInterval;
import boughwright.text.Text;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Checks a draft as it is typed. A sheet that has not changed since the last check is not checked again, so that one edit costs one
 * sheet. Not for several threads.
 */
public final class HouseCheck {

    public static final String LOOKS = "looks";
    public static final String PALETTES = "palettes";

    private static final Pattern ID = Pattern.compile("[a-z][a-z0-9-]{1,40}");
    /** CIEDE2000 up to which two colours pass for one. */
    private static final double ALIKE = 3;

    private final Units units;
    private final Map<Sheet, List<Complaint>> known = new LinkedHashMap<>() {
        @Override
        protected boolean removeEldestEntry(Map.Entry<Sheet, List<Complaint>> eldest) {
            return size() > 60;
        }
    };
    private List<Complaint> complaints = new ArrayList<>();

    /** @param units in which lengths are told */
    public HouseCheck(Units units) {
        this.units = units;
    }

    /** What is to mend or to think about, page by page; the draft can go live when none of it is a fault. */
    public List<Complaint> of(HouseRules rules) {
        complaints = new ArrayList<>();
        sheets(rules);
        numbers(rules);
        words(rules);
        looks(rules);
        palettes(rules);
        return List.copyOf(complaints);
    }

    private void sheets(HouseRules rules) {
        Set<String> seen = new HashSet<>();
        for (Sheet sheet : rules.sheets()) {
            if (!seen.add(sheet.topic())) {
                fault(sheet.topic(), sheet.title(), "", Text.of("house.sheet.twice"));
            }
            complaints.addAll(known.computeIfAbsent(sheet, s -> SheetCheck.of(s, units)));
        }
        Asked.topics().stream().filter(t -> !seen.contains(t)).forEach(t -> fault(t, t, "", Text.of("house.sheet.lost", t + Sheet.ENDING)));
    }

    private void numbers(HouseRules rules) {
        Map<HouseNumber, BigDecimal> read = new LinkedHashMap<>();
        for (HouseNumber number : HouseNumber.values()) {
            String text = rules.numbers().getOrDefault(number, "");
            Optional<BigDecimal> value = NumberText.read(number, text);
            if (text.isBlank()) {
                fault(number, Text.of("house.cell.number-missing"));
            } else if (value.isEmpty()) {
                fault(number, Text.of(number.measure() == HouseNumber.Measure.LENGTH ? "house.number.length" : "house.number.plain", text));
            } else if (!number.allows(value.get())) {
                fault(number, refused(number, value.get()));
            } else {
                read.put(number, value.get());
            }
        }
        rising(read, HouseNumber.TALL_TOPPER_LEAST, HouseNumber.TALL_TOPPER_MOST);
        rising(read, HouseNumber.LOW_TOPPER_LEAST, HouseNumber.LOW_TOPPER_MOST);
        rising(read, HouseNumber.SINGLE_FLOWER_LEAST, HouseNumber.SINGLE_FLOWER_MOST);
        rising(read, HouseNumber.ONE_LOOP_GAP, HouseNumber.TWO_LOOP_GAP);
        rising(read, HouseNumber.SMALL_LOOP, HouseNumber.LOOP);
        rising(read, HouseNumber.SMALL_TREE_SMALL_LOOP, HouseNumber.SMALL_TREE_LOOP);
        sum(read, HouseNumber.SPARK_SHARE, List.of(HouseNumber.MAIN_SHARE, HouseNumber.SECOND_SHARE, HouseNumber.SPARK_SHARE), 100, true);
        sum(read, HouseNumber.RUNS_WITH_END_BOW, List.of(HouseNumber.RUNS_WITH_SMALL_LOOP, HouseNumber.RUNS_WITH_END_BOW), 12, false);
        if (read.containsKey(HouseNumber.SCORE_LOOK_FIT) && read.containsKey(HouseNumber.SCORE_PALETTE_FIT)
                && read.get(HouseNumber.SCORE_LOOK_FIT).add(read.get(HouseNumber.SCORE_PALETTE_FIT)).signum() == 0) {
            fault(HouseNumber.SCORE_LOOK_FIT, Text.of("house.number.no-taste"));
        }
    }

    private String refused(HouseNumber number, BigDecimal value) {
        String least = bound(number, number.least());
        String most = bound(number, number.most());
        boolean lax = number.guard() == Guard.NOT_BELOW && value.compareTo(number.least()) < 0
                || number.guard() == Guard.NOT_ABOVE && value.compareTo(number.most()) > 0;
        if (lax) {
            return Text.of(number.guard() == Guard.NOT_BELOW ? "house.number.floor" : "house.number.ceiling",
                    number.guard() == Guard.NOT_BELOW ? least : most, Text.of("house.why." + number.word()));
        }
        boolean whole = number.measure() == HouseNumber.Measure.COUNT && value.stripTrailingZeros().scale() > 0;
        return Text.of(whole ? "house.number.whole" : "house.number.beyond", least, most);
    }

    private String bound(HouseNumber number, BigDecimal value) {
        return NumberText.said(number, value, units);
    }

    private void rising(Map<HouseNumber, BigDecimal> read, HouseNumber low, HouseNumber high) {
        if (read.containsKey(low) && read.containsKey(high) && read.get(low).compareTo(read.get(high)) >= 0) {
            fault(high, Text.of("house.number.order", name(low), bound(low, read.get(low))));
        }
    }

    private void sum(Map<HouseNumber, BigDecimal> read, HouseNumber at, List<HouseNumber> parts, int whole, boolean exactly) {
        if (read.keySet().containsAll(parts)) {
            BigDecimal sum = parts.stream().map(read::get).reduce(BigDecimal.ZERO, BigDecimal::add);
            int order = sum.compareTo(BigDecimal.valueOf(whole));
            if (order > 0 || exactly && order != 0) {
                fault(at, Text.of(exactly ? "house.number.sum" : "house.number.sum-most", named(parts),
                        String.valueOf(whole), NumberInterval.plain(sum)));
            }
        }
    }

    /** {@code “Main”, “Second” and “Spark”}. */
    private static String named(List<HouseNumber> numbers) {
        List<String> names = numbers.stream().map(n -> "“" + name(n) + "”").toList();
        int last = names.size() - 1;
        return String.join(", ", names.subList(0, last)) + Text.of("house.and") + names.get(last);
    }

    private void words(HouseRules rules) {
        for (HouseWords list : HouseWords.values()) {
            List<String> held = rules.words().getOrDefault(list, List.of());
            String page = page(list);
            if (held.isEmpty() && list.floor().isEmpty()) {
                fault(page, pageTitle(page), name(list), Text.of("house.words.none"));
            }
            held.stream().filter(w -> !vocabulary(list.trait()).contains(w)).forEach(w ->
                    fault(page, pageTitle(page), name(list), Text.of("house.cell.word", w, String.join(", ", vocabulary(list.trait())))));
            list.floor().stream().sorted().filter(w -> !held.contains(w)).forEach(w ->
                    fault(page, pageTitle(page), name(list), Text.of("house.words.floor", w)));
        }
    }

    private void looks(HouseRules rules) {
        if (rules.looks().isEmpty()) {
            fault(LOOKS, pageTitle(LOOKS), "", Text.of("house.look.none"));
        }
        Set<String> ids = new HashSet<>();
        Set<String> palettes = new HashSet<>();
        rules.palettes().forEach(p -> palettes.add(p.id()));
        int row = 0;
        for (Look look : rules.looks()) {
            row++;
            if (!ID.matcher(look.id()).matches() || !ids.add(look.id())) {
                fault(LOOKS, row, heading("tag"), Text.of("house.look.id", look.id()));
            }
            titled(LOOKS, row, look.title());
            if (look.blurb().isBlank() || look.blurb().length() > 200) {
                fault(LOOKS, row, heading("blurb"), Text.of("house.look.blurb"));
            }
            if (look.palette().isBlank()) {
                fault(LOOKS, row, heading("palette"), Text.of("house.cell.word-missing", String.join(", ", rules.palettes().stream().map(Palette::id).toList())));
            } else if (!palettes.contains(look.palette())) {
                fault(LOOKS, row, heading("palette"), Text.of("house.look.palette", look.palette()));
            }
            known(row, "textures", look.textures(), vocabulary(Trait.TEXTURE));
            known(row, "finishes", look.finishes(), vocabulary(Trait.FINISH));
        }
    }

    private void known(int row, String column, List<String> words, List<String> vocabulary) {
        if (words.isEmpty()) {
            fault(LOOKS, row, heading(column), Text.of("house.words.none"));
        }
        words.stream().filter(w -> !vocabulary.contains(w)).forEach(w ->
                fault(LOOKS, row, heading(column), Text.of("house.cell.word", w, String.join(", ", vocabulary))));
    }

    private void palettes(HouseRules rules) {
        Set<String> ids = new HashSet<>();
        int row = 0;
        for (Palette palette : rules.palettes()) {
            row++;
            if (!ID.matcher(palette.id()).matches() || palette.id().equals(Palette.OWN) || !ids.add(palette.id())) {
                fault(PALETTES, row, heading("tag"), Text.of("house.look.id", palette.id()));
            }
            titled(PALETTES, row, palette.title());
            if (Lab.of(palette.main()).difference(Lab.of(palette.second())) < ALIKE) {
                complaints.add(new Complaint(Weight.DOUBT, PALETTES, pageTitle(PALETTES), "", row, heading("second"), Text.of("house.palette.alike", palette.title())));
            }
        }
    }

    private void titled(String page, int row, String title) {
        if (title.isBlank() || title.length() > 60) {
            fault(page, row, heading("title"), Text.of("house.look.title"));
        }
    }

    /** The words that a catalogue uses for a trait. */
    public static List<String> vocabulary(Trait trait) {
        return switch (trait) {
            case TEXTURE -> Word.words(Traits.Texture.class);
            case FINISH -> Word.words(Traits.Finish.class);
            case MATERIAL -> Word.words(Traits.Material.class);
            case PATTERN -> Word.words(Traits.Pattern.class);
            case WEAVE -> Word.words(Traits.Weave.class);
            case SAFETY -> Word.words(Traits.Safety.class);
            case SHAPE -> Word.words(Traits.Shape.class);
            case FAMILY -> Word.words(Traits.Family.class);
            case LEVEL -> Word.words(Traits.Level.class);
            case SCALE, PRODUCT -> List.of();
        };
    }

    /** The page on which a list of words stands. */
    public static String page(HouseWords list) {
        return (switch (list) {
            case OVERLAY_PATTERNS, BASE_WEAVES, ACCENT_WEAVES -> HouseNumber.Theme.RIBBON;
            case BALL_MATERIALS -> HouseNumber.Theme.PIECES;
            case NEVER_WITH_TODDLERS, NEVER_WITH_PETS -> HouseNumber.Theme.CAUTIONS;
        }).word();
    }

    public static String name(HouseNumber number) {
        return Text.of("house.number." + number.word() + ".name");
    }

    public static String name(HouseWords list) {
        return Text.of("house.words." + list.word() + ".name");
    }

    /** The title of a page that is no sheet. */
    public static String pageTitle(String page) {
        return Text.of("house.page." + page);
    }

    private static String heading(String column) {
        return Text.of("house.column." + column);
    }

    private void fault(HouseNumber number, String message) {
        fault(number.theme().word(), pageTitle(number.theme().word()), name(number), message);
    }

    private void fault(String page, String title, String column, String message) {
        complaints.add(new Complaint(Weight.FAULT, page, title, "", 0, column, message));
    }

    private void fault(String page, int row, String column, String message) {
        complaints.add(new Complaint(Weight.FAULT, page, pageTitle(page), "", row, column, message));
    }
}
