package org.leafward.accounts;

import java.time.ZoneId;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Somebody who looks after plants.
 *
 * @param id identifier
 * @param name the name to address them by
 * @param email an address; null for those who took a calendar without giving one
 * @param zone time zone in which their reminders are due
 * @param confirmed whether the owner of the address has followed a link that was sent to
 * it
 */
public record Person(PersonId id, String name, @Nullable String email, ZoneId zone, boolean confirmed) {

	/**
	 * A person with a confirmed address.
	 * @param id identifier
	 * @param name the name to address them by
	 * @param email the address
	 * @param zone time zone in which their reminders are due
	 */
	public Person(PersonId id, String name, String email, ZoneId zone) {
		this(id, name, email, zone, true);
	}

	/**
	 * Where mail may go.
	 * @return empty without an address, and as long as nobody has confirmed it
	 */
	public Optional<String> mailbox() {
		return this.confirmed ? Optional.ofNullable(this.email) : Optional.empty();
	}

}
