package org.arcwright.compose.search;

import java.util.Arrays;

/** A binary heap of labels, the least estimate first; on equal ones the later label, to dive. */
final class Queue {
  private final Labels labels;
  private int[] heap = new int[256];
  private int size;

  Queue(Labels labels) {
    this.labels = labels;
  }

  void clear() {
    size = 0;
  }

  boolean isEmpty() {
    return size == 0;
  }

  int peek() {
    return heap[0];
  }

  void add(int label) {
    if (size == heap.length) {
      heap = Arrays.copyOf(heap, size * 2);
    }
    int i = size++;
    while (i > 0 && before(label, heap[(i - 1) >> 1])) {
      heap[i] = heap[(i - 1) >> 1];
      i = (i - 1) >> 1;
    }
    heap[i] = label;
  }

  int poll() {
    int top = heap[0];
    int moved = heap[--size];
    int i = 0;
    while (2 * i + 1 < size) {
      int child = 2 * i + 1;
      if (child + 1 < size && before(heap[child + 1], heap[child])) {
        child++;
      }
      if (!before(heap[child], moved)) {
        break;
      }
      heap[i] = heap[child];
      i = child;
    }
    heap[i] = moved;
    return top;
  }

  private boolean before(int a, int b) {
    long left = labels.estimates[a];
    long right = labels.estimates[b];
    return left < right || (left == right && a > b);
  }
}
