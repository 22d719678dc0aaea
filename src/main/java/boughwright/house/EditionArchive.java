package boughwright.house;

import boughwright.rulebook.DmnCompiler;
import boughwright.rulebook.Edition;
import boughwright.rulebook.RulebookFault;
import boughwright.rulebook.WrittenFile;
import boughwright.text.Text;
import com.fasterxml.jackson.core.JsonProcessingException;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;

/**
 * An edition as one zip: its DMN 1.5 files, {@code edition.json} and a README; and back, trusting nothing.
 *
 * <p>Nothing of an archive is written to a disk or given to the rule engine. Names are held against a list of what an edition may hold,
 * sizes are counted while they unpack, and each file is read into cells; what is made of it is written anew from those. The same
 * edition gives the same zip, byte for byte.
 */
public final class EditionArchive {

    /** The whole archive, packed and unpacked; an edition has about a tenth of the former and a fifteenth of the latter. */
    public static final int MOST_PACKED = 1_000_000;
    private static final int MOST_UNPACKED = 8_000_000;
    private static final int MOST_FILES = 40;
    /** Of edition.json, in characters: its looks are held against its palettes one by one. An edition has about five thousand. */
    private static final int LONGEST_EDITION = 200_000;
    private static final int LONGEST_NAME = 60;
    private static final int LONGEST_REASON = 300;
    private static final String README = "README.txt";
    /** The folder of the archive may be wrapped in one other, as archives often are. */
    private static final Pattern NAME = Pattern.compile("(?:[A-Za-z0-9 ._-]{1,60}/)?(edition\\.json|README\\.txt|sizing/[a-z][a-z-]{1,40}\\.dmn)");
    private static final Pattern FOLDER = Pattern.compile("(?:[A-Za-z0-9 ._-]{1,60}/)?(?:sizing/)?");
    private static final Pattern DOTS = Pattern.compile("(?:^|/)\\.{1,2}(?:/|$)");
    /** The first moment that a zip can name, by no clock and in no time zone. */
    private static final LocalDateTime EPOCH = LocalDateTime.of(1980, 1, 1, 0, 0);
    /** Windows programs put it before a UTF-8 text; neither an XML nor a JSON reader takes it there. */
    private static final String BYTE_ORDER_MARK = "\uFEFF";
    /** The record at the end of an archive: {@code PK}, 5, 6; and how long it is at least. */
    private static final int END = 0x06054b50;
    private static final int END_LENGTH = 22;

    private EditionArchive() {
    }

    /** What came of reading an archive. */
    public sealed interface Reading {

        /** @param lacking topics that the archive holds nothing of; the rules have them as they were */
        record Read(HouseRules rules, String title, List<String> lacking) implements Reading {
        }

        record Faulty(List<String> faults) implements Reading {
        }
    }

    /** @param texts files of the edition by path */
    public static byte[] zip(SortedMap<String, String> texts, String title, String note) {
        SortedMap<String, String> files = new TreeMap<>(texts);
        String tables = texts.keySet().stream().filter(p -> p.endsWith(Sheet.ENDING)).map(p -> "  " + p).collect(Collectors.joining("\n"));
        files.put(README, Text.of("house.archive.readme", title, note.isBlank() ? "–" : note, tables));
        try {
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            try (ZipOutputStream zip = new ZipOutputStream(bytes, StandardCharsets.UTF_8)) {
                for (Map.Entry<String, String> file : files.entrySet()) {
                    ZipEntry entry = new ZipEntry(file.getKey());
                    entry.setTimeLocal(EPOCH);
                    zip.putNextEntry(entry);
                    zip.write(file.getValue().getBytes(StandardCharsets.UTF_8));
                    zip.closeEntry();
                }
            }
            return bytes.toByteArray();
        } catch (IOException impossible) {
            throw new IllegalStateException("an archive could not be written to memory", impossible);
        }
    }

    /**
     * Reads an archive, or a single DMN file, into a draft.
     *
     * @param name of the file as it was given, for what is no archive
     * @param rules whose pages stay as they are where the archive holds none
     * @param edition that the rules are of
     */
    public static Reading read(String name, byte[] bytes, HouseRules rules, Edition edition) {
        if (bytes.length > MOST_PACKED) {
            return faulty(Text.of("house.archive.large", MOST_PACKED / 1_000_000));
        }
        List<String> faults = new ArrayList<>();
        Map<String, String> texts = new LinkedHashMap<>();
        if (name.toLowerCase(java.util.Locale.ROOT).endsWith(Sheet.ENDING)) {
            String file = name.substring(Math.max(name.lastIndexOf('/'), name.lastIndexOf('\\')) + 1);
            decoded(file, bytes, faults).ifPresent(text -> texts.put(Sheet.FOLDER + file, text));
        } else {
            unpack(bytes, texts, faults);
        }
        if (!faults.isEmpty()) {
            return new Reading.Faulty(faults);
        }
        return texts.keySet().stream().noneMatch(p -> !p.equals(README)) ? faulty(Text.of("house.archive.nothing")) : rules(texts, rules, edition);
    }

    private static Reading faulty(String sentence) {
        return new Reading.Faulty(List.of(sentence));
    }

    private static void unpack(byte[] bytes, Map<String, String> texts, List<String> faults) {
        long unpacked = 0;
        int files = 0;
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(bytes), StandardCharsets.UTF_8)) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                if (++files > MOST_FILES) {
                    faults.add(Text.of("house.archive.many", MOST_FILES));
                    return;
                }
                ByteArrayOutputStream out = new ByteArrayOutputStream();
                byte[] part = new byte[8192];
                for (int read = zip.read(part); read >= 0; read = zip.read(part)) {
                    unpacked += read;
                    // Counted as it comes, of files that will be refused too: what an archive says of its own sizes is not to be believed.
                    if (unpacked > MOST_UNPACKED) {
                        faults.add(Text.of("house.archive.bomb", MOST_UNPACKED / 1_000_000));
                        return;
                    }
                    out.write(part, 0, read);
                }
                var name = NAME.matcher(entry.getName());
                boolean named = name.matches();
                if (DOTS.matcher(entry.getName()).find() || !named && !FOLDER.matcher(entry.getName()).matches()) {
                    faults.add(Text.of("house.archive.name", shortened(entry.getName(), LONGEST_NAME)));
                }
                if (!named) {
                    continue;
                }
                Optional<String> text = decoded(name.group(1), out.toByteArray(), faults);
                if (text.isPresent() && texts.put(name.group(1), text.get()) != null) {
                    faults.add(Text.of("house.archive.twice", name.group(1)));
                }
            }
        } catch (IOException | IllegalArgumentException broken) {
            faults.add(Text.of("house.archive.broken"));
            return;
        }
        if (files == 0) {
            faults.add(Text.of("house.archive.none"));
        } else if (files != listed(bytes)) {
            // Where an archive was cut off between two files, the stream ends as if it were whole.
            faults.add(Text.of("house.archive.broken"));
        }
    }

    /** The files that the record at the end of an archive counts; −1 when it has none. */
    private static int listed(byte[] bytes) {
        ByteBuffer end = ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
        for (int at = bytes.length - END_LENGTH; at >= 0; at--) {
            if (end.getInt(at) == END) {
                return Short.toUnsignedInt(end.getShort(at + 10));
            }
        }
        return -1;
    }

    private static String shortened(String text, int most) {
        String plain = text.replaceAll("\\p{C}", "?");
        return plain.length() <= most ? plain : plain.substring(0, most - 1) + "…";
    }

    private static Optional<String> decoded(String name, byte[] bytes, List<String> faults) {
        try {
            String text = StandardCharsets.UTF_8.newDecoder().onMalformedInput(CodingErrorAction.REPORT).onUnmappableCharacter(CodingErrorAction.REPORT)
                    .decode(ByteBuffer.wrap(bytes)).toString();
            return Optional.of(text.startsWith(BYTE_ORDER_MARK) ? text.substring(1) : text);
        } catch (CharacterCodingException e) {
            faults.add(Text.of("house.archive.utf8", name));
            return Optional.empty();
        }
    }

    private static Reading rules(Map<String, String> texts, HouseRules rules, Edition edition) {
        List<RulebookFault> faults = new ArrayList<>();
        Map<String, Sheet> sheets = new LinkedHashMap<>();
        rules.sheets().forEach(s -> sheets.put(s.topic(), s));
        List<String> lacking = new ArrayList<>(sheets.keySet());
        texts.forEach((path, text) -> {
            if (path.endsWith(Sheet.ENDING)) {
                List<RulebookFault> own = new ArrayList<>();
                Optional<WrittenFile> written = DmnCompiler.read(path, text, own);
                written.filter(w -> own.isEmpty()).flatMap(w -> SheetReader.read(w, own)).ifPresent(sheet -> {
                    sheets.put(sheet.topic(), sheet);
                    lacking.remove(sheet.topic());
                });
                faults.addAll(own);
            }
        });
        Edition read = edition;
        if (texts.containsKey(EditionTexts.EDITION)) {
            if (texts.get(EditionTexts.EDITION).length() > LONGEST_EDITION) {
                return faulty(Text.of("house.archive.wordy", LONGEST_EDITION));
            }
            try {
                read = Edition.read(texts.get(EditionTexts.EDITION));
            } catch (JsonProcessingException | IllegalArgumentException e) {
                return faulty(Text.of("house.archive.edition", shortened(String.valueOf(e.getMessage()).lines().findFirst().orElse(""), LONGEST_REASON)));
            }
        }
        if (!faults.isEmpty()) {
            return new Reading.Faulty(faults.stream().limit(50).map(RulebookFault::sentence).toList());
        }
        if (texts.containsKey(EditionTexts.EDITION)) {
            EditionTexts.Reading plain = EditionTexts.read(new Edition(read.id(), read.title(), read.shop(), List.of(), List.of(), read.choices(), read.house()), Map.of());
            HouseRules data = ((EditionTexts.Reading.Read) plain).rules();
            return new Reading.Read(new HouseRules(List.copyOf(sheets.values()), data.numbers(), data.words(), data.looks(), data.palettes()), read.title(), lacking);
        }
        return new Reading.Read(new HouseRules(List.copyOf(sheets.values()), rules.numbers(), rules.words(), rules.looks(), rules.palettes()), "", lacking);
    }
}
