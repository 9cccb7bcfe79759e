package exergue.source.tidy;

import exergue.source.shape.Block;
import exergue.source.shape.Key;
import exergue.source.shape.ListOf;
import exergue.source.shape.MapOf;
import exergue.source.shape.TextOr;
import exergue.source.shape.Texts;
import exergue.source.shape.Wanted;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.yaml.snakeyaml.DumperOptions.ScalarStyle;
import org.yaml.snakeyaml.comments.CommentLine;
import org.yaml.snakeyaml.comments.CommentType;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;

/**
 * Writes one file. Keys come in the order of the reference, ids in their own. A list of texts, or a block that can have
 * three keys at most, stands in brackets on one line if it fits; everything else has a line for each key or member.
 */
final class EntryWriter {

    private static final int WIDTH = 120;
    private static final int MOST_KEYS_ON_A_LINE = 3;

    private final StringBuilder out = new StringBuilder();

    /** Where the last text of several lines ends: an empty line after it would count as part of it. */
    private int endOfLines;

    private final boolean breaks;

    private EntryWriter(boolean breaks) {
        this.breaks = breaks;
    }

    /** @param breaks whether long texts are broken at their spaces */
    static String write(MappingNode root, Wanted<?> wanted, boolean breaks) {
        EntryWriter writer = new EntryWriter(breaks);
        writer.comments(root.getBlockComments(), "");
        writer.heading(root);
        writer.entries(root, wanted, "", false);
        writer.comments(root.getEndComments(), "");
        return writer.out.toString().replaceAll("\n+$", "") + "\n";
    }

    /** What stands over the first key, parted from it by an empty line, is said of the whole file. */
    private void heading(MappingNode root) {
        if (root.getValue().isEmpty()) {
            return;
        }
        Node first = root.getValue().get(0).getKeyNode();
        List<CommentLine> lines = listed(first.getBlockComments());
        int end = lines.size();
        while (end > 0 && lines.get(end - 1).getCommentType() != CommentType.BLANK_LINE) {
            end--;
        }
        comments(lines.subList(0, end), "");
        first.setBlockComments(lines.subList(end, lines.size()));
    }

    private void entries(MappingNode node, Wanted<?> wanted, String indent, boolean firstIsBegun) {
        boolean begun = firstIsBegun;
        for (NodeTuple entry : ordered(node, wanted)) {
            ScalarNode key = (ScalarNode) entry.getKeyNode();
            if (!begun) {
                comments(key.getBlockComments(), indent);
                if (entry.getValueNode() instanceof ScalarNode) {
                    comments(entry.getValueNode().getBlockComments(), indent);
                }
                out.append(indent);
            }
            begun = false;
            out.append(text(key, false)).append(':');
            value(entry.getValueNode(), within(wanted, key.getValue()), indent, remarks(key.getInLineComments()));
        }
    }

    private static List<NodeTuple> ordered(MappingNode node, Wanted<?> wanted) {
        List<NodeTuple> entries = new ArrayList<>(node.getValue());
        if (wanted instanceof Block<?> block) {
            List<String> names = block.keys().stream().map(Key::name).toList();
            entries.sort(Comparator.comparingInt(entry -> {
                int place = names.indexOf(((ScalarNode) entry.getKeyNode()).getValue());
                return place < 0 ? names.size() : place;
            }));
        }
        return entries;
    }

    /** What follows a key and its colon. */
    private void value(Node value, Wanted<?> wanted, String indent, String remarks) {
        int used = width(indent) + 1 + out.length() - out.lastIndexOf("\n");
        boolean stays = value instanceof ScalarNode scalar && (!breaks || !ScalarText.canBeFolded(scalar.getValue()) || !remarks.isEmpty()
                || !remarks(value.getInLineComments()).isEmpty());
        Optional<String> line = onOneLine(value, wanted, false).filter(text -> stays || used + width(text) <= WIDTH);
        if (line.isPresent()) {
            out.append(line.get().isEmpty() ? "" : " ").append(line.get()).append(remarks).append(remarks(value.getInLineComments())).append('\n');
        } else if (value instanceof ScalarNode scalar) {
            lines(scalar, indent + "  ", remarks);
        } else if (value instanceof MappingNode mapping) {
            out.append(remarks).append(remarks(value.getInLineComments())).append('\n');
            comments(value.getBlockComments(), indent + "  ");
            entries(mapping, wanted, indent + "  ", false);
        } else {
            out.append(remarks).append(remarks(value.getInLineComments())).append('\n');
            comments(value.getBlockComments(), indent + "  ");
            members((SequenceNode) value, wanted, indent + "  ");
        }
        comments(value.getEndComments(), indent);
    }

    private void members(SequenceNode list, Wanted<?> wanted, String indent) {
        Wanted<?> member = wanted instanceof ListOf<?> of ? of.member() : null;
        for (Node one : list.getValue()) {
            comments(takeFirstComments(one), indent);
            out.append(indent).append('-');
            Optional<String> line = onOneLine(one, member, true).filter(text -> width(indent) + 2 + width(text) <= WIDTH);
            if (one instanceof MappingNode mapping && line.isEmpty()) {
                out.append(' ');
                entries(mapping, member, indent + "  ", true);
                comments(one.getEndComments(), indent);
            } else if (line.isPresent()) {
                out.append(' ').append(line.get()).append(remarks(one.getInLineComments())).append('\n');
            } else {
                value(one, member, indent, "");
            }
        }
    }

    /** Those before the hyphen, whether the file has them at the member or at its first key. */
    private static List<CommentLine> takeFirstComments(Node member) {
        List<CommentLine> all = new ArrayList<>(listed(member.getBlockComments()));
        member.setBlockComments(null);
        if (member instanceof MappingNode mapping && !mapping.getValue().isEmpty()) {
            Node first = mapping.getValue().get(0).getKeyNode();
            all.addAll(listed(first.getBlockComments()));
            first.setBlockComments(null);
        }
        return all;
    }

    /** A text of several lines, or a long one broken at its spaces. */
    private void lines(ScalarNode scalar, String indent, String remarks) {
        String text = scalar.getValue();
        String said = remarks + remarks(scalar.getInLineComments());
        if (ScalarText.canBeLiteral(text)) {
            out.append(' ').append(ScalarText.literalSign(text)).append(said).append('\n');
            text.lines().forEach(line -> out.append(line.isEmpty() ? "" : indent).append(line).append('\n'));
        } else if (breaks && !text.contains("\n") && ScalarText.canBeFolded(text)) {
            out.append(" >-").append(said).append('\n');
            fold(text, indent);
        } else {
            out.append(' ').append(text(scalar, false)).append(said).append('\n');
        }
        endOfLines = out.length();
    }

    private void fold(String text, String indent) {
        StringBuilder line = new StringBuilder(indent);
        for (String word : text.split(" ")) {
            if (line.length() > indent.length() && width(line) + 1 + width(word) > WIDTH) {
                out.append(line).append('\n');
                line.setLength(indent.length());
            }
            line.append(line.length() > indent.length() ? " " : "").append(word);
        }
        out.append(line).append('\n');
    }

    /** Empty where it cannot or should not stand on one line. */
    private static Optional<String> onOneLine(Node node, Wanted<?> wanted, boolean member) {
        if (node instanceof ScalarNode scalar) {
            return ScalarText.plainOrQuoted(scalar.getValue(), isQuoted(scalar), false);
        }
        if (hasComments(node) || !member && !listed(node.getBlockComments()).isEmpty()) {
            return Optional.empty();
        }
        if (node instanceof SequenceNode list) {
            boolean texts = list.getValue().stream().allMatch(ScalarNode.class::isInstance);
            return texts ? inBrackets(list.getValue()).map(inside -> "[" + inside + "]") : Optional.empty();
        }
        Block<?> block = wanted instanceof Block<?> of ? of : wanted instanceof TextOr<?> either ? either.block() : null;
        boolean isShort = block == null ? !(wanted instanceof MapOf<?>) : isShort(block);
        return isShort || ((MappingNode) node).getValue().isEmpty() ? inBraces((MappingNode) node, block) : Optional.empty();
    }

    /** A side, whose description is a line of prose, is not: it reads better line by line. */
    private static boolean isShort(Block<?> block) {
        return block.keys().size() <= MOST_KEYS_ON_A_LINE
                && block.keys().stream().noneMatch(key -> key.wanted() == Texts.LINE || key.wanted() == Texts.PROSE);
    }

    private static Optional<String> inBraces(MappingNode node, Wanted<?> wanted) {
        List<String> entries = new ArrayList<>();
        for (NodeTuple entry : ordered(node, wanted)) {
            Node value = entry.getValueNode();
            Optional<String> text = value instanceof ScalarNode scalar
                    ? ScalarText.plainOrQuoted(scalar.getValue(), isQuoted(scalar), true)
                    : value instanceof SequenceNode ? onOneLine(value, null, true) : Optional.empty();
            if (text.isEmpty()) {
                return Optional.empty();
            }
            entries.add(text((ScalarNode) entry.getKeyNode(), true) + ": " + text.get());
        }
        return Optional.of("{" + String.join(", ", entries) + "}");
    }

    /** A text that would need quotes for the brackets alone reads better on a line of its own. */
    private static Optional<String> inBrackets(List<Node> texts) {
        boolean awkward = texts.stream().map(ScalarNode.class::cast).anyMatch(node -> node.getValue().contains("\n")
                || ScalarText.isPlain(node.getValue(), isQuoted(node)) && ScalarText.needsQuotesInBrackets(node.getValue()));
        return awkward ? Optional.empty()
                : Optional.of(texts.stream().map(node -> text((ScalarNode) node, true)).collect(Collectors.joining(", ")));
    }

    private static boolean hasComments(Node node) {
        Stream<Node> inner = node instanceof MappingNode mapping
                ? mapping.getValue().stream().flatMap(entry -> Stream.of(entry.getKeyNode(), entry.getValueNode()))
                : node instanceof SequenceNode list ? list.getValue().stream() : Stream.empty();
        return inner.anyMatch(one -> !listed(one.getBlockComments()).isEmpty() || !listed(one.getInLineComments()).isEmpty()
                || !listed(one.getEndComments()).isEmpty() || hasComments(one)) || !listed(node.getEndComments()).isEmpty();
    }

    private static String text(ScalarNode scalar, boolean inBrackets) {
        return ScalarText.of(scalar.getValue(), isQuoted(scalar), inBrackets);
    }

    private static boolean isQuoted(ScalarNode scalar) {
        return scalar.getScalarStyle() != ScalarStyle.PLAIN;
    }

    private static Wanted<?> within(Wanted<?> wanted, String key) {
        if (wanted instanceof MapOf<?> map) {
            return map.member();
        }
        Wanted<?> block = wanted instanceof TextOr<?> either ? either.block() : wanted;
        return block instanceof Block<?> of ? of.keys().stream().filter(one -> one.name().equals(key)).findFirst()
                .<Wanted<?>>map(Key::wanted).orElse(null) : null;
    }

    private static List<CommentLine> listed(List<CommentLine> comments) {
        return comments == null ? List.of() : comments;
    }

    /** Comments behind what stands on a line. */
    private static String remarks(List<CommentLine> comments) {
        return listed(comments).stream().filter(line -> line.getCommentType() != CommentType.BLANK_LINE)
                .map(line -> "  #" + line.getValue().stripTrailing()).collect(Collectors.joining());
    }

    private static int width(CharSequence text) {
        return (int) text.codePoints().count();
    }

    private void comments(List<CommentLine> lines, String indent) {
        for (CommentLine line : listed(lines)) {
            boolean blank = line.getCommentType() == CommentType.BLANK_LINE;
            if (!blank) {
                out.append(indent).append('#').append(line.getValue().stripTrailing()).append('\n');
            } else if (out.length() > 1 && out.length() != endOfLines && out.charAt(out.length() - 2) != '\n') {
                out.append('\n');
            }
        }
    }
}
