package org.leafward.advisories.atom;

import java.net.URI;
import java.time.Instant;
import java.util.List;
import org.leafward.regions.core.Ring;

/**
 * A feed.
 *
 * @param id identifier that never changes
 * @param title its title
 * @param subtitle what is in it
 * @param updated when anything in it last changed
 * @param self its own address
 * @param page the page that says the same
 * @param author who writes it
 * @param entries newest first
 */
public record AtomFeed(URI id, String title, String subtitle, Instant updated, URI self, URI page, String author,
		List<Entry> entries) {

	public AtomFeed {
		entries = List.copyOf(entries);
	}

	/**
	 * A message.
	 *
	 * @param id identifier of the message
	 * @param title its headline
	 * @param summary its words
	 * @param sent when it was sent
	 * @param alert address of its CAP document
	 * @param page address of its page
	 * @param event what it is about
	 * @param severity by CAP's word
	 * @param rings where
	 */
	public record Entry(URI id, String title, String summary, Instant sent, URI alert, URI page, String event,
			String severity, List<Ring> rings) {

		public Entry {
			rings = List.copyOf(rings);
		}

	}

}
