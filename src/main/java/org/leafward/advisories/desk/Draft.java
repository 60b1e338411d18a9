package org.leafward.advisories.desk;

import java.time.Instant;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.advisories.core.chain.MessageType;

/**
 * A message that is being written.
 *
 * @param id identifier
 * @param advisory the advisory that it changes or calls off; null for a new one
 * @param type what it will do
 * @param proposal the proposal that it goes back to; null for none
 * @param condition code of the watched condition; null for none
 * @param counties codes of its counties, as far as they are chosen
 * @param fields the form as it was left
 * @param state how far it is
 * @param sendAt when it goes out by itself; null unless it is scheduled
 * @param writer who wrote it; null for the operator token
 * @param approver who approved it; null for nobody
 * @param version rises with each change
 * @param changedAt when it was last changed
 * @param trouble why it could not be sent at its time; null otherwise
 * @param message what it became; null before
 */
public record Draft(UUID id, @Nullable UUID advisory, MessageType type, @Nullable UUID proposal,
		@Nullable String condition, Set<String> counties, DraftFields fields, State state, @Nullable Instant sendAt,
		@Nullable UUID writer, @Nullable UUID approver, int version, Instant changedAt, @Nullable String trouble,
		@Nullable UUID message) {

	public Draft {
		counties = Set.copyOf(counties);
	}

	/** How far a draft is. */
	public enum State {

		/** Somebody writes. */
		WRITING("being written"),

		/** It waits for somebody else to look at it. */
		WAITING("waits for a second person"),

		/** It goes out by itself at its time. */
		SCHEDULED("goes out at its time"),

		/** It was sent. */
		SENT("sent"),

		/** It was given up. */
		DROPPED("given up");

		private final String words;

		State(String words) {
			this.words = words;
		}

		/**
		 * The state in words.
		 * @return for example "being written"
		 */
		public String words() {
			return this.words;
		}

		/**
		 * Whether something may still become of it.
		 * @return false once it was sent or given up
		 */
		public boolean open() {
			return this != SENT && this != DROPPED;
		}

	}

}
