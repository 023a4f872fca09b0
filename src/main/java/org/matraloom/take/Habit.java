package org.matraloom.take;

/** A wrong way to say a nadai that many fall into. */
public enum Habit {
  /** The speed before the change goes on: five matras, each as long as a quarter of a beat. */
  OLD_SPEED_KEPT,
  /** Five said as two and three: two quarters of a beat, then three sixths. */
  LIMPING,
  /** Each beat is hurried through and then waited for: each matra a sixth of the beat. */
  RUSHED_THEN_WAITING
}
