package org.arcwright.compose.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.arcwright.brief.Brief;
import org.arcwright.brief.OwnItem;
import org.arcwright.brief.Wishes;
import org.arcwright.catalog.Catalog;

/**
 * What a brief asks for, what it is most about first: of two sets that clash, the one that stands
 * earlier here is the one to tell a facilitator.
 *
 * @param wishes what a facilitator decides
 * @param facts what a facilitator can rarely change: who comes, and what is there beforehand
 */
record Wishlist(List<Wish> wishes, List<Wish> facts) {

  static Wishlist of(Brief brief, Catalog catalog, Steps steps) {
    List<Wish> wishes = new ArrayList<>();
    wishes.add(new Wish.Cap(brief.cap()));
    Set<String> pinned =
        brief.wishes().pins().stream().map(Wishes.Pin::exercise).collect(Collectors.toSet());
    for (String exercise : brief.wishes().include()) {
      if (!pinned.contains(exercise)) {
        wishes.add(new Wish.Include(exercise));
      }
    }
    brief.wishes().pins().forEach(pin -> wishes.add(new Wish.Pinned(pin)));
    for (OwnItem item : brief.ownItems()) {
      wishes.add(new Wish.Own(item));
    }
    brief.meals().forEach(meal -> wishes.add(new Wish.Meal(meal)));
    brief.wishes().leaveOut().forEach(exercise -> wishes.add(new Wish.LeaveOut(exercise)));
    wishes.add(new Wish.Openness(brief.group().openness()));
    wishes.add(new Wish.Tools(steps.atHand()));
    wishes.add(new Wish.Stretch(brief.rhythm().longest()));
    wishes.add(new Wish.Pause(brief.rhythm().pause()));
    wishes.add(new Wish.Buffer(brief.bufferPercent()));
    catalog.rules().keySet().forEach(name -> wishes.add(new Wish.Rule(name)));
    List<Wish> facts =
        List.of(new Wish.People(brief.group().count()), new Wish.Given(brief.given()));
    return new Wishlist(
        wishes.stream().distinct().filter(steps::canBeLoosened).toList(),
        facts.stream().filter(steps::canBeLoosened).toList());
  }
}
