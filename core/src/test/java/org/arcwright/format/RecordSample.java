package org.arcwright.format;

/** A record in which everything comes up. */
final class RecordSample {
  static final String TEXT =
      """
      title: Winter planning
      mode: remote
      people: 9
      start: 2026-12-03 09:30
      zone: Europe/Vienna
      sponsor: The board
      outcome: We lend repair kits, for one season to begin with.
      happened:
        - {item: weather-report, from: 09:33, to: 09:44, note: Two joined by phone.}
        - {item: break, from: 09:50, to: 10:02}
        - {item: guest-talk, title: A guest's view, from: 35m, to: 50m}
      decisions:
        - what: We lend repair kits.
          how: dots, then a round of consent
          by: all nine present
          why: Most asked for, and two of us can teach it.
          votes:
            - question: What do we look at more closely?
              method: multivoting
              votes-each: 3
              on-one: 2
              options: [Repair kits, Seeds, Tents]
              ballots: [{Repair kits: 2, Seeds: 1}, {Tents: 2, Repair kits: 1}]
              result: Repair kits
            - {question: Do we start with repair kits?, method: consent, people: 3, reservations: [Storage], objections: [], result: passed}
      votes:
        - {question: Which five?, method: ranked-points, picks: 2, voters: 2, totals: {Seeds: 4, Tents: 2}}
        - {question: In which order?, method: borda, options: [A, B, C], ballots: [[A, [B, C]], [B, A, C]], result: A}
        - {question: Two at a time?, method: condorcet, options: [A, B], over: [[0, 2], [1, 0]], result: A}
        - {question: Which would do?, method: approval, options: [A, B], ballots: [[A], [A, B], []], result: A}
        - {question: Who speaks for us?, method: majority, totals: {Mara: 5, Ilse: 3}, abstentions: 1, entitled: 12, quorum: 6, more-than-half-of: present, result: Mara}
        - {question: Which weighs most?, method: weighted-matrix, criteria: {Cost: 2, Reach: 3}, marks: {A: [4, 5], B: [5, 3]}, result: A}
        - {question: Better than now?, method: datum-matrix, datum: Now, criteria: [Cost, Reach], signs: {A: [1, 0], B: [-1, 1]}, result: [A, B]}
        - {question: A second evening?, method: show-of-hands, yes: 5, no: 3, abstentions: 1, result: passed}
        - {question: Shall we go on?, method: fist-to-five, fingers: [5, 4, 3], result: passed}
      open-points: [Who keeps the key?, {what: Insurance, who: Mara}]
      parking-lot: [A second branch]
      takeaways: [{said: I did not know how much we have., by: Ilse}, Good to see all.]
      actions: [{who: Mara, what: Ask for an offer., when: 2026-12-10}, {who: Ilse, what: Tell the neighbours.}]
      thanks: [To Joan for the room.]
      notes: [{at: 10:05, text: The board was slow.}]
      follow-ups: {handover: 2026-12-04 10:00, first: 2026-12-17, every-weeks: 2, times: 3}
      """;

  private RecordSample() {}
}
