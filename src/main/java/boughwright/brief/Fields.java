package boughwright.brief;

import boughwright.measure.Length;
import boughwright.text.Text;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;

/**
 * The fields of one JSON object, read one by one; what cannot be read is added to the faults under its path.
 *
 * @param prefix path of the object with its point, or empty
 */
record Fields(JsonNode object, String prefix, List<BriefFault> faults) {

    /** Metres by which two lengths may differ and still be one: 20 ft may be written as 6.096 m or 240 in. */
    static final double HAIR = 1e-9;

    boolean has(String name) {
        return object.has(name);
    }

    /** The value, or null when absent. A JSON null is a fault of its own: leave a field out to take its default. */
    JsonNode node(String name) {
        JsonNode value = object.get(name);
        return value == null || value.isNull() ? null : value;
    }

    String rawText(String name) {
        JsonNode value = node(name);
        return value == null || !value.isTextual() ? "" : value.textValue();
    }

    Fields object(String name) {
        JsonNode value = node(name);
        if (value != null && !value.isObject()) {
            fault(name, value, Text.of("brief.object.mend"));
            value = null;
        }
        return new Fields(value == null ? JsonNodeFactory.instance.objectNode() : value, prefix + name + ".", faults);
    }

    Optional<String> text(String name, String mend) {
        JsonNode value = node(name);
        if (value == null) {
            return Optional.empty();
        }
        if (!value.isTextual()) {
            fault(name, value, mend);
            return Optional.empty();
        }
        return Optional.of(value.textValue());
    }

    Optional<Length> length(String name, Length least, Length most, String mend) {
        Optional<String> text = text(name, mend);
        Optional<Length> length = text.flatMap(Length::read);
        boolean served = length.isPresent()
                && length.get().metres() >= least.metres() - HAIR && length.get().metres() <= most.metres() + HAIR;
        if (text.isPresent() && !served) {
            faults.add(BriefFault.wrong(prefix + name, text.get(), mend));
        }
        return served ? length : Optional.empty();
    }

    <W extends Enum<W> & Word> W choice(String name, Class<W> choices, W otherwise) {
        String mend = Text.of("brief.choice.mend", String.join(", ", Word.words(choices)));
        Optional<String> text = text(name, mend);
        Optional<W> choice = text.flatMap(t -> Word.read(choices, t));
        if (text.isPresent() && choice.isEmpty()) {
            faults.add(BriefFault.wrong(prefix + name, text.get(), mend));
        }
        return choice.orElse(otherwise);
    }

    boolean flag(String name) {
        JsonNode value = node(name);
        if (value != null && !value.isBoolean()) {
            fault(name, value, Text.of("brief.flag.mend"));
            return false;
        }
        return value != null && value.booleanValue();
    }

    Optional<Integer> whole(String name, int least, int most, String mend) {
        JsonNode value = node(name);
        if (value == null) {
            return Optional.empty();
        }
        if (!value.isIntegralNumber() || !value.canConvertToInt() || value.intValue() < least || value.intValue() > most) {
            fault(name, value, mend);
            return Optional.empty();
        }
        return Optional.of(value.intValue());
    }

    /** Faults for every field that is none of these, and for every JSON null. */
    void refuseOthers(String... known) {
        List<String> names = List.of(known);
        for (Iterator<String> it = object.fieldNames(); it.hasNext(); ) {
            String name = it.next();
            if (!names.contains(name)) {
                fault(name, object.get(name), Text.of("brief.unknown.mend", String.join(", ", names)));
            } else if (object.get(name).isNull()) {
                fault(name, object.get(name), Text.of("brief.null.mend"));
            }
        }
    }

    private void fault(String name, JsonNode value, String mend) {
        faults.add(BriefFault.wrong(prefix + name, value.isTextual() ? value.textValue() : value.toString(), mend));
    }
}
