/** Another project's module: it needs to name these two, and what they need comes with them. */
module planner {
  requires org.arcwright.core;
  requires org.arcwright.library;
}
