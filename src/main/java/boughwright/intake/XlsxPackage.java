package boughwright.intake;

import boughwright.text.Text;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;

/**
 * The parts of an XLSX (ECMA-376, Office Open XML), found through their relationships and unpacked within the limits, which are kept by what
 * is really unpacked and not by what the package says of itself.
 */
final class XlsxPackage implements Closeable {

    /** @param part its name in the package */
    record Sheet(String name, boolean visible, String part) {
    }

    /** Beyond so many bytes a part's ratio is looked at: small parts of much the same may be packed tightly. */
    private static final long RATIO_FROM = 1_000_000;

    private final ZipFile zip;
    private final Limits limits;
    private final Map<String, ZipEntry> parts = new HashMap<>();
    private final Map<String, String> targetsById = new HashMap<>();
    private final List<Sheet> sheets = new ArrayList<>();
    private String shared;
    private String styles;
    private boolean from1904;
    private long unpacked;

    XlsxPackage(Path stored, Limits limits) throws IOException, RefusedFile {
        this.limits = limits;
        try {
            this.zip = new ZipFile(stored.toFile());
        } catch (ZipException | IllegalArgumentException e) {
            throw new RefusedFile(Refusal.BROKEN, Text.of("intake.broken.packing"));
        }
        try {
            if (zip.size() > limits.packedParts()) {
                throw new RefusedFile(Refusal.PACKED_PARTS, String.valueOf(limits.packedParts()));
            }
            zip.stream().forEach(entry -> parts.putIfAbsent(entry.getName().toLowerCase(Locale.ROOT), entry));
            String book = relationships("").entrySet().stream().filter(r -> r.getKey().endsWith("/officeDocument")).map(Map.Entry::getValue)
                    .findFirst().filter(part -> !part.endsWith(".bin")).orElseThrow(() -> new RefusedFile(Refusal.OTHER_ARCHIVE));
            relationships(book).forEach((type, target) -> {
                shared = type.endsWith("/sharedStrings") ? target : shared;
                styles = type.endsWith("/styles") ? target : styles;
            });
            book(book);
        } catch (RefusedFile | IOException | RuntimeException e) {
            zip.close();
            throw e;
        }
    }

    /** In the order of their tabs. */
    List<Sheet> sheets() {
        return List.copyOf(sheets);
    }

    /** The part with the strings that cells point at, or null. */
    String shared() {
        return shared;
    }

    /** The part with the formats of cells, or null. */
    String styles() {
        return styles;
    }

    /** Whether days are counted from 1904 rather than from 1900. */
    boolean from1904() {
        return from1904;
    }

    XmlPart part(String name) throws IOException, RefusedFile {
        ZipEntry entry = parts.get(name.toLowerCase(Locale.ROOT));
        if (entry == null) {
            throw new RefusedFile(Refusal.BROKEN, Text.of("intake.broken.part", name));
        }
        return new XmlPart(name, unpacked(entry));
    }

    /** How much of a part there is, as the package says; 0 when it does not. */
    long size(String name) {
        ZipEntry entry = parts.get(name.toLowerCase(Locale.ROOT));
        return entry == null ? 0 : Math.max(0, entry.getSize());
    }

    /** Bytes unpacked so far. */
    long unpacked() {
        return unpacked;
    }

    private InputStream unpacked(ZipEntry entry) throws IOException, RefusedFile {
        try {
            return new CountingStream(zip.getInputStream(entry)) {
                @Override
                void passed(int count) throws IOException {
                    super.passed(count);
                    unpacked += count;
                    if (unpacked > limits.unpackedBytes()) {
                        throw new XmlPieces.Stopped(new RefusedFile(Refusal.UNPACKED_SIZE, String.valueOf(limits.unpackedBytes() / 1_000_000)));
                    }
                    if (bytes() > RATIO_FROM && bytes() > limits.packRatio() * Math.max(1, entry.getCompressedSize())) {
                        throw new XmlPieces.Stopped(new RefusedFile(Refusal.PACK_RATIO, String.valueOf(limits.packRatio())));
                    }
                }
            };
        } catch (ZipException e) {
            throw new RefusedFile(Refusal.BROKEN, Text.of("intake.broken.packing"));
        }
    }

    /** What a part points at, by kind of relationship, the last of each; targets by their ids go to {@link #targetsById}. */
    private Map<String, String> relationships(String part) throws IOException, RefusedFile {
        int slash = part.lastIndexOf('/') + 1;
        String folder = part.substring(0, slash);
        String name = folder + "_rels/" + part.substring(slash) + ".rels";
        Map<String, String> targets = new HashMap<>();
        if (!parts.containsKey(name.toLowerCase(Locale.ROOT))) {
            return targets;
        }
        try (XmlPart xml = part(name)) {
            while (xml.next()) {
                String target = xml.begins("Relationship") ? xml.attribute("Target") : null;
                if (target != null && !"External".equals(xml.attribute("TargetMode"))) {
                    targets.put(String.valueOf(xml.attribute("Type")), resolved(folder, target));
                    targetsById.put(String.valueOf(xml.attribute("Id")), resolved(folder, target));
                }
            }
        }
        return targets;
    }

    /** A target as a name in the package: from its root when it begins with a slash, else from the folder of the part that points at it. */
    private static String resolved(String folder, String target) {
        Deque<String> names = new ArrayDeque<>();
        for (String name : (target.startsWith("/") ? target : folder + target).split("/")) {
            if (name.equals("..")) {
                names.pollLast();
            } else if (!name.isEmpty() && !name.equals(".")) {
                names.addLast(name);
            }
        }
        return String.join("/", names);
    }

    private void book(String part) throws IOException, RefusedFile {
        try (XmlPart xml = part(part)) {
            boolean first = true;
            while (xml.next()) {
                if (first && !xml.begins("workbook")) {
                    throw new RefusedFile(Refusal.OTHER_ARCHIVE);
                }
                first = false;
                if (xml.begins("workbookPr")) {
                    from1904 = List.of("1", "true").contains(String.valueOf(xml.attribute("date1904")));
                } else if (xml.begins("sheet")) {
                    String state = xml.attribute("state");
                    String target = targetsById.get(String.valueOf(xml.attribute("id")));
                    if (target != null) {
                        sheets.add(new Sheet(String.valueOf(xml.attribute("name")), state == null || state.equals("visible"), target));
                    }
                }
            }
        }
    }

    @Override
    public void close() throws IOException {
        zip.close();
    }
}
