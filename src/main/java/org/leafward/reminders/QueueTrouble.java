package org.leafward.reminders;

/**
 * Messages that nobody took, and how often nobody knows.
 *
 * @param failed messages that were refused for good
 * @param uncertain how often messages were handed on without word of what came of it
 */
public record QueueTrouble(long failed, long uncertain) {
}
