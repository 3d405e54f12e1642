package org.arcwright.format.tree;

import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.arcwright.format.tree.Node.Mapping;
import org.arcwright.format.tree.Node.Member;
import org.arcwright.format.tree.Node.Scalar;
import org.arcwright.format.tree.Node.ScalarType;
import org.arcwright.format.tree.Node.Sequence;
import org.snakeyaml.engine.v2.api.DumpSettings;
import org.snakeyaml.engine.v2.api.StreamDataWriter;
import org.snakeyaml.engine.v2.common.FlowStyle;
import org.snakeyaml.engine.v2.common.ScalarStyle;
import org.snakeyaml.engine.v2.emitter.Emitter;
import org.snakeyaml.engine.v2.events.DocumentEndEvent;
import org.snakeyaml.engine.v2.events.DocumentStartEvent;
import org.snakeyaml.engine.v2.events.ImplicitTuple;
import org.snakeyaml.engine.v2.events.MappingEndEvent;
import org.snakeyaml.engine.v2.events.MappingStartEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.events.SequenceEndEvent;
import org.snakeyaml.engine.v2.events.SequenceStartEvent;
import org.snakeyaml.engine.v2.events.StreamEndEvent;
import org.snakeyaml.engine.v2.events.StreamStartEvent;
import org.snakeyaml.engine.v2.nodes.Tag;
import org.snakeyaml.engine.v2.resolver.JsonScalarResolver;

/**
 * Writes a tree as YAML the way a person would: short lists in brackets, long texts folded, quotes
 * only where they are needed.
 */
public final class YamlWriter {
  /** Line breaks of any script, which only double quotes keep as they are. */
  private static final Pattern LINE_BREAK = Pattern.compile("\\R");

  private final StringBuilder out = new StringBuilder();
  private final Emitter emitter;

  private YamlWriter() {
    DumpSettings settings =
        DumpSettings.builder()
            .setWidth(Layout.WIDTH)
            .setIndent(2)
            .setIndicatorIndent(2)
            .setIndentWithIndicator(true)
            .setMaxSimpleKeyLength(128)
            .build();
    emitter = new Emitter(settings, new Sink(out));
  }

  /** The text of one document; ends with a line break. */
  public static String write(Node root) {
    YamlWriter writer = new YamlWriter();
    writer.emitter.emit(new StreamStartEvent());
    writer.emitter.emit(new DocumentStartEvent(false, Optional.empty(), Map.of()));
    writer.node(root, FlowStyle.BLOCK);
    writer.emitter.emit(new DocumentEndEvent(false));
    writer.emitter.emit(new StreamEndEvent());
    return writer.out.toString();
  }

  private record Sink(StringBuilder out) implements StreamDataWriter {
    @Override
    public void write(String text) {
      out.append(text);
    }

    @Override
    public void write(String text, int offset, int length) {
      out.append(text, offset, offset + length);
    }
  }

  private void node(Node node, FlowStyle style) {
    if (node instanceof Scalar scalar) {
      scalar(scalar, style == FlowStyle.FLOW);
    } else if (node instanceof Sequence sequence) {
      emitter.emit(new SequenceStartEvent(Optional.empty(), Optional.empty(), true, style));
      sequence.nodes().forEach(child -> node(child, within(style, child)));
      emitter.emit(new SequenceEndEvent());
    } else if (node instanceof Mapping mapping) {
      emitter.emit(new MappingStartEvent(Optional.empty(), Optional.empty(), true, style));
      for (Member entry : mapping.members()) {
        emit(entry.key(), ScalarStyle.PLAIN);
        node(entry.value(), within(style, entry.value()));
      }
      emitter.emit(new MappingEndEvent());
    }
  }

  private static FlowStyle within(FlowStyle outer, Node node) {
    boolean onOneLine =
        !(node instanceof Scalar)
            && !isListOfMappings(node)
            && Layout.fits(node, Layout.WIDTH - 16);
    return outer == FlowStyle.FLOW || onOneLine ? FlowStyle.FLOW : FlowStyle.BLOCK;
  }

  private static boolean isListOfMappings(Node node) {
    return node instanceof Sequence list
        && list.nodes().stream().anyMatch(Mapping.class::isInstance);
  }

  private void scalar(Scalar scalar, boolean inLine) {
    emit(
        scalar.text(),
        scalar.type() == ScalarType.TEXT ? style(scalar.text(), inLine) : ScalarStyle.PLAIN);
  }

  private static ScalarStyle style(String text, boolean inLine) {
    if (LINE_BREAK.matcher(text).find()) {
      return ScalarStyle.DOUBLE_QUOTED;
    }
    if (!inLine && text.length() > Layout.WIDTH - 24) {
      return ScalarStyle.FOLDED;
    }
    boolean plain = new JsonScalarResolver().resolve(text, true).equals(Tag.STR);
    return plain ? ScalarStyle.PLAIN : ScalarStyle.SINGLE_QUOTED;
  }

  private void emit(String text, ScalarStyle style) {
    ImplicitTuple noTag = new ImplicitTuple(true, true);
    emitter.emit(new ScalarEvent(Optional.empty(), Optional.empty(), noTag, text, style));
  }
}
