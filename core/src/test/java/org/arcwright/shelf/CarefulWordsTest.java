package org.arcwright.shelf;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Words that ask for care, and the same words where they are harmless. */
class CarefulWordsTest {
  @ParameterizedTest
  @ValueSource(
      strings = {
        "Everybody stands up and says a word.",
        "Please get up and find a partner.",
        "Stand in a circle.",
        "All stand along the wall.",
        "Walk to the sheet you like best.",
        "In pairs, go for a walk.",
        "Stretch your arms to the ceiling.",
        "Then all stretch.",
        "Run to the corner that fits.",
        "Jump ten times.",
        "Everybody jumps, claps and sits down.",
        "Hop on one leg.",
        "Dance through the room.",
        "Line up by years of service.",
        "Step forward if it holds for you.",
        "Swap seats with a neighbour.",
        "Shake hands with everybody.",
        "Roll your shoulders.",
        "Throw the ball to somebody.",
        "Move to the other side of the room."
      })
  void bodies_move(String text) {
    assertThat(CarefulWords.ofBodies(text)).isPresent();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Look back on this stretch of work.",
        "It is a stretch goal.",
        "Run the vote a second time.",
        "If you run out of ideas, wait.",
        "Say where we stand today.",
        "So that all can stand behind it.",
        "Read what stands there.",
        "What does the letter stand for?",
        "Walk us through the plan.",
        "Each group walks through its line.",
        "Do not jump to conclusions.",
        "Move on to the next item.",
        "Move the notes together.",
        "Step back. What do you see?",
        "Nobody needs to leave a chair."
      })
  void bodies_rest(String text) {
    assertThat(CarefulWords.ofBodies(text)).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Tell a memory of your childhood.",
        "Name your greatest fear.",
        "Share a personal crisis and how you came out of it.",
        "Tell the others something that nobody here knows about you.",
        "Think of a time when you felt ashamed.",
        "Speak about the loss of somebody dear.",
        "Everybody tells of a death or a loss that still hurts.",
        "Draw the hardest moments of your life."
      })
  void people_disclose(String text) {
    assertThat(CarefulWords.ofDisclosure(text)).isPresent();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Name the risk you fear most for this plan.",
        "Tell how you came to this topic.",
        "What failed in the last release?",
        "Say your name and your role.",
        "Which part of the plan is the weakest?"
      })
  void people_talk_of_work(String text) {
    assertThat(CarefulWords.ofDisclosure(text)).isEmpty();
  }
}
