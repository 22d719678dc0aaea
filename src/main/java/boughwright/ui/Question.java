package boughwright.ui;

import boughwright.brief.Word;

/** The questions of the interview, in order; each is one page. */
enum Question implements Word {
    TREE, SEEN_FROM, ROOM, HOUSEHOLD, LOOK, PALETTE, ABUNDANCE, BUDGET, OWNED;

    /** Text key of the part of the brief that the page belongs to. */
    String topicKey() {
        return "interview." + word() + ".topic";
    }

    String titleKey() {
        return "interview." + word() + ".title";
    }

    String whyKey() {
        return "interview." + word() + ".why";
    }

    /** Fields of the brief that the page asks for; a fault in one of them is told on this page. */
    boolean asksFor(String field) {
        return switch (this) {
            case TREE -> field.equals("tree.height") || field.equals("tree.widestDiameter");
            case SEEN_FROM -> field.equals("tree.seenFrom") || field.equals("tree.fullness");
            case ROOM -> field.startsWith("room");
            case HOUSEHOLD -> field.startsWith("household");
            case LOOK -> field.equals("look");
            case PALETTE -> field.startsWith("palette");
            case ABUNDANCE -> field.equals("abundance");
            case BUDGET -> field.equals("budget");
            case OWNED -> field.startsWith("owned");
        };
    }
}
