package org.arcwright.format;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.arcwright.brief.Wishes;
import org.arcwright.catalog.Checks;
import org.arcwright.catalog.Word;
import org.arcwright.compose.explain.Wish;
import org.arcwright.format.tree.Branch;
import org.arcwright.format.tree.Faults;
import org.arcwright.format.tree.Fields;
import org.arcwright.format.tree.Keys;
import org.arcwright.format.tree.Node;

/**
 * Reads and writes one thing that a brief asks for, such as {@code {"wish": "cap", "time": 90}}.
 */
final class WishForm {
  private static final Keys KEYS =
      Keys.of(
          "wish: \"cap\"",
          "time: 90",
          "exercise: \"dot-voting\"",
          "at: \"60m\"",
          "item",
          "meal",
          "number: 12",
          "name: \"never-two-silent\"",
          "words: []");

  /** What a wish is about, as briefs name it. */
  enum Kind implements Word {
    CAP("cap"),
    INCLUDE("include"),
    PIN("pin"),
    OWN_ITEM("own-item"),
    MEAL("meal"),
    LEAVE_OUT("leave-out"),
    TOOLS("tools"),
    OPENNESS("openness"),
    STRETCH("stretch"),
    BREAK("break"),
    BUFFER("buffer"),
    RULE("rule"),
    PEOPLE("people"),
    GIVEN("given");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    @Override
    public String word() {
      return word;
    }
  }

  private WishForm() {}

  static Optional<Wish> read(Node node, Faults faults) {
    Fields fields = Fields.of(node, "wish", KEYS, faults);
    return switch (fields.word(Kind.class, "wish")) {
      case CAP -> time(fields, faults, Wish.Cap::new);
      case STRETCH -> time(fields, faults, Wish.Stretch::new);
      case BREAK -> time(fields, faults, Wish.Pause::new);
      case INCLUDE -> exercise(fields, Wish.Include::new);
      case LEAVE_OUT -> exercise(fields, Wish.LeaveOut::new);
      case OPENNESS -> number(fields, Wish.Openness::new);
      case BUFFER -> number(fields, Wish.Buffer::new);
      case PEOPLE -> number(fields, Wish.People::new);
      case TOOLS -> words(fields, words -> new Wish.Tools(Checks.ids("words", words)));
      case GIVEN -> words(fields, words -> new Wish.Given(Checks.ids("words", words)));
      case RULE -> {
        String name = fields.text("name");
        yield fields.build(() -> new Wish.Rule(name));
      }
      case PIN -> {
        String exercise = fields.text("exercise");
        var at = fields.required("at").flatMap(n -> BriefTimes.moment(n, faults));
        yield fields.build(() -> new Wish.Pinned(new Wishes.Pin(exercise, at.orElseThrow())));
      }
      case OWN_ITEM -> {
        var item = fields.required("item").flatMap(n -> WishesReader.ownItem(n, faults));
        yield fields.build(() -> new Wish.Own(item.orElseThrow()));
      }
      case MEAL -> {
        BriefTimes times = new BriefTimes(fields, faults);
        var meal = fields.required("meal").flatMap(n -> times.meal(n, faults));
        yield fields.build(() -> new Wish.Meal(meal.orElseThrow()));
      }
    };
  }

  private static Optional<Wish> time(
      Fields fields, Faults faults, Function<Duration, Wish> constructor) {
    Optional<Duration> time =
        fields.required("time").flatMap(n -> Times.minutes(n, "time", faults));
    return fields.build(() -> constructor.apply(time.orElseThrow()));
  }

  private static Optional<Wish> exercise(Fields fields, Function<String, Wish> constructor) {
    String exercise = fields.text("exercise");
    return fields.build(() -> constructor.apply(exercise));
  }

  private static Optional<Wish> number(Fields fields, Function<Integer, Wish> constructor) {
    int number = fields.whole("number");
    return fields.build(() -> constructor.apply(number));
  }

  private static Optional<Wish> words(Fields fields, Function<List<String>, Wish> constructor) {
    List<String> words = fields.texts("words");
    return fields.build(() -> constructor.apply(words));
  }

  static Node tree(Wish wish) {
    if (wish instanceof Wish.Cap cap) {
      return begin(Kind.CAP).put("time", Times.minutes(cap.most())).end();
    }
    if (wish instanceof Wish.Stretch stretch) {
      return begin(Kind.STRETCH).put("time", Times.minutes(stretch.longest())).end();
    }
    if (wish instanceof Wish.Pause pause) {
      return begin(Kind.BREAK).put("time", Times.minutes(pause.length())).end();
    }
    if (wish instanceof Wish.Include in) {
      return begin(Kind.INCLUDE).put("exercise", in.exercise()).end();
    }
    if (wish instanceof Wish.LeaveOut out) {
      return begin(Kind.LEAVE_OUT).put("exercise", out.exercise()).end();
    }
    if (wish instanceof Wish.Openness openness) {
      return begin(Kind.OPENNESS).put("number", openness.most()).end();
    }
    if (wish instanceof Wish.Buffer buffer) {
      return begin(Kind.BUFFER).put("number", buffer.percent()).end();
    }
    if (wish instanceof Wish.Rule rule) {
      return begin(Kind.RULE).put("name", rule.name()).end();
    }
    if (wish instanceof Wish.People people) {
      return begin(Kind.PEOPLE).put("number", people.count()).end();
    }
    if (wish instanceof Wish.Tools tools) {
      return begin(Kind.TOOLS).put("words", tools.atHand()).end();
    }
    if (wish instanceof Wish.Given given) {
      return begin(Kind.GIVEN).put("words", given.products()).end();
    }
    if (wish instanceof Wish.Pinned pinned) {
      return begin(Kind.PIN)
          .put("exercise", pinned.pin().exercise())
          .put("at", BriefWriter.text(pinned.pin().at()))
          .end();
    }
    return wish instanceof Wish.Own own
        ? begin(Kind.OWN_ITEM).put("item", BriefWriter.tree(own.item())).end()
        : begin(Kind.MEAL).put("meal", BriefWriter.tree(((Wish.Meal) wish).meal())).end();
  }

  private static Branch begin(Kind kind) {
    return new Branch().put("wish", kind.word());
  }
}
