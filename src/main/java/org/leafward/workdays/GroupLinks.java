package org.leafward.workdays;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.leafward.accounts.PersonId;
import org.leafward.accounts.Secret;
import org.leafward.measure.BadInput;
import org.leafward.workdays.store.InvitationTable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Links by which people join a group. Whoever has one may join while it works. */
@Service
public class GroupLinks {

	/** How long a link works. */
	public static final Duration LASTS = Duration.ofDays(14);

	private static final int MOST = 20;

	private final InvitationTable table;

	private final Clock clock;

	GroupLinks(InvitationTable table, Clock clock) {
		this.table = table;
		this.clock = clock;
	}

	/**
	 * Makes a link.
	 * @param group to which
	 * @param by who makes it
	 * @return its secret, which is kept nowhere
	 * @throws BadInput when the group has too many already
	 */
	@Transactional
	public String make(GroupId group, PersonId by) {
		Instant now = this.clock.instant();
		if (this.table.of(group, now).size() >= MOST) {
			throw new BadInput("the group has %d links already".formatted(MOST), "link", "withdraw one first");
		}
		String secret = Secret.make();
		this.table.add(new GroupLink(UUID.randomUUID(), group, now, now.plus(LASTS)), Secret.hash(secret), by);
		return secret;
	}

	public List<GroupLink> of(GroupId group) {
		return this.table.of(group, this.clock.instant());
	}

	/**
	 * Where a link leads.
	 * @param secret what stands in its address
	 * @return empty when there is none, or it has ended
	 */
	public Optional<GroupId> find(String secret) {
		return this.table.find(Secret.hash(secret), this.clock.instant()).map(GroupLink::group);
	}

	@Transactional
	public void withdraw(GroupId group, UUID link) {
		this.table.remove(group, link, this.clock.instant());
	}

}
