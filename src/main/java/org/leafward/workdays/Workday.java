package org.leafward.workdays;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A day on which a group works.
 *
 * @param id identifier
 * @param group whose
 * @param groupName what the group is called
 * @param day the day
 * @param begins when it begins
 * @param ends when it ends, later on that day
 * @param zone time zone of both
 * @param meetingPoint where to come to, may be empty
 * @param sites those that are worked on, by name
 * @param state where it stands
 * @param calledOffBecause the reason, when it is called off
 * @param sequence number of changes of day, time or place and of calling off since it was
 * published (RFC 5546)
 * @param capacity how many can come, children included
 * @param places how many places are taken, children included
 * @param waiting how many people wait for a place
 * @param tasks what is to be done; of tasks that care has no more, too
 * @param rainDay the day that takes its place when the weather forbids it; null for none
 * @param locked whether planning anew leaves the day as it is
 * @param createdAt when it was planned
 * @param changedAt when members last saw something change
 */
public record Workday(WorkdayId id, GroupId group, String groupName, LocalDate day, LocalTime begins, LocalTime ends,
		ZoneId zone, String meetingPoint, List<GroupSite> sites, WorkdayState state, @Nullable String calledOffBecause,
		int sequence, int capacity, int places, int waiting, List<WorkdayTask> tasks, @Nullable LocalDate rainDay,
		boolean locked, Instant createdAt, Instant changedAt) {

	public Workday {
		sites = List.copyOf(sites);
		tasks = List.copyOf(tasks);
	}

	/**
	 * Its identifier in calendars, the same in invitations and feeds.
	 * @return an UID of RFC 5545
	 */
	public String uid() {
		return "workday-%s@leafward".formatted(this.id);
	}

	public ZonedDateTime start() {
		return ZonedDateTime.of(this.day, this.begins, this.zone);
	}

	public ZonedDateTime end() {
		return ZonedDateTime.of(this.day, this.ends, this.zone);
	}

	/**
	 * Whether members know of it.
	 * @return false for one that is only proposed
	 */
	public boolean published() {
		return this.state != WorkdayState.PROPOSED;
	}

	public int free() {
		return Math.max(0, this.capacity - this.places);
	}

}
