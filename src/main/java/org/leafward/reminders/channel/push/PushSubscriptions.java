package org.leafward.reminders.channel.push;

import java.time.Clock;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;
import org.leafward.measure.BadInput;
import org.leafward.measure.Findings;
import org.leafward.measure.Given;
import org.leafward.measure.NotThere;
import org.leafward.reminders.PushKeys;
import org.leafward.reminders.PushSubscription;
import org.leafward.reminders.core.PushEndpoint;
import org.leafward.reminders.dispatch.Materialiser;
import org.leafward.reminders.store.PushTable;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * The browsers on which a person gets messages. After a change the person's reminders are
 * made anew before the call returns, so that a new browser hears of what is due next.
 */
@Service
public class PushSubscriptions {

	private final PushTable table;

	private final Materialiser materialiser;

	private final boolean plain;

	private final Clock clock;

	PushSubscriptions(PushTable table, Materialiser materialiser, @Value("${leafward.http.plain:false}") boolean plain,
			Clock clock) {
		this.table = table;
		this.materialiser = materialiser;
		this.plain = plain;
		this.clock = clock;
	}

	/**
	 * The browsers of a person.
	 * @param person whose
	 * @return oldest first, at most {@value PushSubscription#MOST}
	 */
	public List<PushSubscription> of(PersonId person) {
		return this.table.of(person);
	}

	/**
	 * Adds a browser. One that is known already is a new person's from then on, and keeps
	 * one row. When a person has more than {@value PushSubscription#MOST}, the one that
	 * was not used for longest goes.
	 * @param person whose it is
	 * @param endpoint the push service's address for it
	 * @param p256dh its public key in base64url
	 * @param auth its secret in base64url
	 * @param label what its owner calls it, 1 to {@value PushSubscription#LONGEST_LABEL}
	 * characters
	 * @throws BadInput with all that can't be used
	 */
	@Transactional
	public void add(PersonId person, @Nullable String endpoint, @Nullable String p256dh, @Nullable String auth,
			@Nullable String label) {
		Findings findings = new Findings();
		var place = findings.read(() -> PushEndpoint.of(endpoint, this.plain));
		var keys = findings.read(() -> checked(PushKeys.of(p256dh, auth)));
		var name = findings.read(() -> label(label));
		this.table.save(findings.give(() -> new PushSubscription(UUID.randomUUID(), person,
				place.get().address().toString(), keys.get(), name.get(), this.clock.instant(), null, 0)));
		this.materialiser.person(person);
	}

	private static PushKeys checked(PushKeys keys) {
		Sealing.check(keys);
		return keys;
	}

	private static String label(@Nullable String label) {
		String text = Given.line("label", Given.text("label", label));
		if (text.length() > PushSubscription.LONGEST_LABEL) {
			throw new BadInput("label has more than %d characters".formatted(PushSubscription.LONGEST_LABEL), "label",
					"shorten it");
		}
		return text;
	}

	/**
	 * Sends nothing to a browser any more.
	 * @param person whose it must be
	 * @param id the browser
	 * @throws NotThere if the person has no such browser
	 */
	@Transactional
	public void remove(PersonId person, UUID id) {
		if (!this.table.remove(person, id)) {
			throw new NotThere("There is no such browser.");
		}
		this.materialiser.person(person);
	}

}
