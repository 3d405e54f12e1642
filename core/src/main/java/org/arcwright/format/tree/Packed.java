package org.arcwright.format.tree;

import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.arcwright.format.tree.Node.Mapping;
import org.arcwright.format.tree.Node.Member;
import org.arcwright.format.tree.Node.Scalar;
import org.arcwright.format.tree.Node.ScalarType;
import org.arcwright.format.tree.Node.Sequence;

/**
 * A tree in a form that a program which has just started reads in a tenth of the time that JSON
 * takes: each text once, then the nodes, which name texts by number. Made by a build for the same
 * build's code; it is no form to exchange.
 */
public final class Packed {
  private static final int MARK = 0x41524331;
  private static final List<ScalarType> SCALARS =
      List.of(
          ScalarType.TEXT,
          ScalarType.WHOLE,
          ScalarType.DECIMAL,
          ScalarType.FLAG,
          ScalarType.NOTHING);
  private static final int SEQUENCE = 100;
  private static final int MAPPING = 101;

  private Packed() {}

  /** Writes the tree; texts are at most 65,535 bytes long. */
  public static void write(Node root, OutputStream out) throws IOException {
    Map<String, Integer> texts = new LinkedHashMap<>();
    number(root, texts);
    DataOutputStream data = new DataOutputStream(out);
    data.writeInt(MARK);
    data.writeInt(texts.size());
    for (String text : texts.keySet()) {
      data.writeUTF(text);
    }
    write(root, texts, data);
    data.flush();
  }

  private static void number(Node node, Map<String, Integer> texts) {
    if (node instanceof Scalar scalar) {
      texts.putIfAbsent(scalar.text(), texts.size());
    } else if (node instanceof Sequence sequence) {
      sequence.nodes().forEach(child -> number(child, texts));
    } else if (node instanceof Mapping mapping) {
      for (Member member : mapping.members()) {
        texts.putIfAbsent(member.key(), texts.size());
        number(member.value(), texts);
      }
    }
  }

  private static void write(Node node, Map<String, Integer> texts, DataOutputStream data)
      throws IOException {
    if (node instanceof Scalar scalar) {
      data.writeByte(SCALARS.indexOf(scalar.type()));
      data.writeInt(texts.getOrDefault(scalar.text(), 0));
    } else if (node instanceof Sequence sequence) {
      data.writeByte(SEQUENCE);
      data.writeInt(sequence.nodes().size());
      for (Node child : sequence.nodes()) {
        write(child, texts, data);
      }
    } else if (node instanceof Mapping mapping) {
      data.writeByte(MAPPING);
      data.writeInt(mapping.members().size());
      for (Member member : mapping.members()) {
        data.writeInt(texts.getOrDefault(member.key(), 0));
        write(member.value(), texts, data);
      }
    }
  }

  /**
   * Reads a tree.
   *
   * @param in best a stream over memory, for it is read in small pieces
   * @throws IOException if the stream fails or was not written by {@link #write}
   */
  public static Node read(InputStream in) throws IOException {
    DataInputStream data = new DataInputStream(in);
    if (data.readInt() != MARK) {
      throw new IOException("no packed tree of this version");
    }
    String[] texts = new String[data.readInt()];
    for (int i = 0; i < texts.length; i++) {
      texts[i] = data.readUTF();
    }
    return read(data, texts);
  }

  private static Node read(DataInputStream data, String[] texts) throws IOException {
    int kind = data.readByte();
    int number = data.readInt();
    if (kind == SEQUENCE) {
      List<Node> nodes = new ArrayList<>(number);
      for (int i = 0; i < number; i++) {
        nodes.add(read(data, texts));
      }
      return new Sequence(0, 0, nodes);
    }
    if (kind == MAPPING) {
      List<Member> members = new ArrayList<>(number);
      for (int i = 0; i < number; i++) {
        String key = texts[data.readInt()];
        members.add(new Member(0, 0, key, read(data, texts)));
      }
      return new Mapping(0, 0, members);
    }
    return new Scalar(0, 0, SCALARS.get(kind), texts[number]);
  }
}
