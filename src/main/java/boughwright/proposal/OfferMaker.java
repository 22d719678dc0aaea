package boughwright.proposal;

import boughwright.brief.Abundance;
import boughwright.brief.Brief;
import boughwright.brief.Palette;
import boughwright.colour.Lab;
import boughwright.kit.Kit;
import boughwright.kit.Patience;
import boughwright.kit.Term;
import boughwright.kit.TermScore;
import boughwright.measure.Money;
import boughwright.needs.Adjustments;
import boughwright.needs.Role;
import boughwright.proposal.Offers.Kind;
import boughwright.proposal.Offers.Offer;
import boughwright.proposal.Offers.PaletteHint;
import boughwright.text.Text;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Makes the leaner and the fuller offer beside what was asked for, and looks at near palettes. */
final class OfferMaker {

    /** The leaner offer costs at most this share of the budget, the fuller at most this (common practice, no published source). */
    private static final double LEANER = 0.75;
    private static final double FULLER = 1.25;
    /** Points of score from which on an improvement is worth naming. */
    private static final double WORTH = 1.0;
    private static final double PALETTE_WORTH = 2.0;
    /** Mean CIEDE2000 of two palettes, weighted as their parts show, up to which one is near the other; and how many are tried. */
    private static final double NEAR = 30;
    private static final int PALETTES = 2;
    private static final int MOST_DIFFERENCES = 5;

    private final Designer designer;
    private final Proposal asked;
    private final Patience patience;
    private final Adjustments hand;

    OfferMaker(Designer designer, Proposal asked, Patience patience) {
        this.designer = designer;
        this.asked = asked;
        this.patience = patience;
        // Another way to meet the brief is chosen afresh, with what a hand has asked for and without clinging to what stood before.
        this.hand = asked.adjustments().keeping(Map.of());
    }

    /** What was asked for alone. */
    Offers asAsked() {
        Brief brief = asked.brief();
        return new Offers(List.of(new Offer(Kind.ASKED, asked, Text.of("offer.asked." + (brief.budget().isPresent() ? "budget" : "free"),
                brief.budget().map(Money::show).orElse("")), List.of(), brief.abundance(), brief.budget())), Optional.empty());
    }

    Offers offers() {
        List<Offer> offers = new ArrayList<>(asAsked().offers());
        leaner().ifPresent(offers::add);
        fuller().ifPresent(offers::add);
        return new Offers(offers, palette());
    }

    private Money share(Money of, double share) {
        return Money.ofCoins((long) Math.floor(of.coins() * share), of.currency());
    }

    private Optional<Offer> leaner() {
        Money budget = share(asked.brief().budget().orElse(asked.kit().total()), LEANER);
        if (asked.kit().total().compareTo(budget) <= 0) {
            budget = share(asked.kit().total(), LEANER);
        }
        if (budget.amount().signum() <= 0) {
            return Optional.empty();
        }
        Optional<Kit> best = Optional.empty();
        Brief simplest = asked.brief();
        for (int level = asked.brief().abundance().ordinal(); level >= 0; level--) {
            Brief brief = asked.brief().withBudget(Optional.of(budget)).withAbundance(Abundance.values()[level]);
            // Fewer good pieces are better than as many of the wrong colour.
            Optional<Kit> kit = designer.kitFrom(best.map(b -> b.score() + WORTH).orElse(Double.NEGATIVE_INFINITY), brief, hand, patience);
            if (kit.isPresent() && (best.isEmpty() || kit.get().score() > best.get().score() + WORTH)) {
                best = kit;
                simplest = brief;
            }
        }
        Money most = budget;
        Brief brief = simplest;
        return best.map(kit -> designer.hung(brief, hand, kit, asked.seed())).map(p -> new Offer(Kind.LEANER, p, leanerWords(p), differences(p), p.brief().abundance(), Optional.of(most)));
    }

    private String leanerWords(Proposal leaner) {
        Money saved = asked.kit().total().minus(leaner.kit().total());
        Abundance abundance = leaner.brief().abundance();
        return abundance == asked.brief().abundance() ? Text.of("offer.leaner.same", saved.show())
                : Text.of("offer.leaner.simpler", saved.show(), word(abundance), word(asked.brief().abundance()));
    }

    private static String word(Abundance abundance) {
        return Text.within(Text.of("abundance." + abundance.word()));
    }

    /** Dressed more richly when a little more money reaches so far; else the same, better, when the gain is worth naming. */
    private Optional<Offer> fuller() {
        Money budget = share(asked.brief().budget().orElse(asked.kit().total()), FULLER);
        Abundance abundance = asked.brief().abundance();
        if (abundance != Abundance.LAVISH) {
            Abundance richer = Abundance.values()[abundance.ordinal() + 1];
            Optional<Proposal> made = designer.ifPossible(asked.brief().withBudget(Optional.of(budget)).withAbundance(richer), hand, asked.seed(), patience);
            if (made.isPresent()) {
                Money more = made.get().kit().total().minus(asked.kit().total());
                return Optional.of(new Offer(Kind.FULLER, made.get(), Text.of("offer.fuller.richer", more.show(), word(richer), word(abundance)),
                        differences(made.get()), richer, Optional.of(budget)));
            }
        }
        if (asked.brief().budget().isEmpty()) {
            return Optional.empty();
        }
        Brief better = asked.brief().withBudget(Optional.of(budget));
        return designer.kitFrom(asked.kit().score() + WORTH, better, hand, patience).filter(kit -> kit.total().compareTo(asked.kit().total()) > 0)
                .map(kit -> designer.hung(better, hand, kit, asked.seed())).map(p -> new Offer(Kind.FULLER, p, Text.of("offer.fuller.better", p.kit().total().minus(asked.kit().total()).show(), gain(p)),
                        differences(p), abundance, Optional.of(budget)));
    }

    /** The term that gains most. */
    private String gain(Proposal other) {
        Map<Term, Double> before = new EnumMap<>(Term.class);
        asked.kit().terms().forEach(t -> before.put(t.term(), t.points()));
        return other.kit().terms().stream().max(Comparator.comparingDouble((TermScore t) -> t.points() - before.get(t.term())))
                .map(t -> Text.of("offer.gain." + t.term().word())).orElseThrow();
    }

    /** Numbers that differ, role by role, and how many products do. */
    private List<String> differences(Proposal other) {
        List<String> differences = new ArrayList<>();
        for (Role role : Role.values()) {
            int before = count(asked, role);
            int after = count(other, role);
            if (role.bought() && before != after && differences.size() < MOST_DIFFERENCES) {
                differences.add(Text.of("offer.number", Text.of("role.many." + role.word()), before, after));
            }
        }
        Map<String, String> before = asked.products();
        long swapped = other.products().entrySet().stream().filter(e -> before.containsKey(e.getKey()) && !before.get(e.getKey()).equals(e.getValue()))
                .count();
        if (swapped > 0) {
            differences.add(Text.of("offer.products", swapped));
        }
        return differences;
    }

    private static int count(Proposal proposal, Role role) {
        return proposal.kit().lines().stream().filter(l -> l.role() == role).mapToInt(l -> l.quantity()).sum();
    }

    private Optional<PaletteHint> palette() {
        Brief brief = asked.brief();
        List<Palette> near = designer.rulebook().choices().palettes().stream()
                .filter(p -> !p.id().equals(brief.palette().id()) && distance(p, brief.palette()) <= NEAR)
                .sorted(Comparator.comparingDouble((Palette p) -> distance(p, brief.palette())).thenComparing(Palette::id)).limit(PALETTES).toList();
        Optional<PaletteHint> best = Optional.empty();
        for (Palette palette : near) {
            double wanted = Math.max(PALETTE_WORTH, best.map(PaletteHint::points).orElse(0.0));
            Optional<PaletteHint> hint = designer.kitFrom(asked.kit().score() + wanted, brief.withPalette(palette), hand, patience)
                    .map(kit -> new PaletteHint(palette, kit.score() - asked.kit().score(), kit.total())).filter(h -> h.points() >= PALETTE_WORTH);
            if (hint.isPresent() && (best.isEmpty() || hint.get().points() > best.get().points())) {
                best = hint;
            }
        }
        return best;
    }

    private static double distance(Palette one, Palette other) {
        double[] shares = {0.6, 0.25, 0.1, 0.05};
        double sum = 0;
        for (int i = 0; i < shares.length; i++) {
            sum += shares[i] * Lab.of(one.colours().get(i)).difference(Lab.of(other.colours().get(i)));
        }
        return sum;
    }
}
