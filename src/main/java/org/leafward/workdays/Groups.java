package org.leafward.workdays;

import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.leafward.accounts.People;
import org.leafward.accounts.Person;
import org.leafward.accounts.PersonId;
import org.leafward.pages.Formats;
import org.leafward.register.Register;
import org.leafward.register.Site;
import org.leafward.register.SiteId;
import org.leafward.workdays.store.GroupTable.GroupRow;
import org.leafward.workdays.store.GroupTable.MemberRow;
import org.leafward.workdays.store.GroupTable.SiteRow;
import org.leafward.workdays.store.GroupTable;
import org.springframework.stereotype.Service;

/** Volunteer groups as others may read them. Who may see what is asked by the caller. */
@Service
public class Groups {

	private final GroupTable table;

	private final People people;

	private final Register register;

	Groups(GroupTable table, People people, Register register) {
		this.table = table;
		this.people = people;
		this.register = register;
	}

	/**
	 * A group.
	 * @param id its identifier
	 * @return empty when there is none
	 */
	public Optional<Group> find(GroupId id) {
		return whole(this.table.find(List.of(id))).stream().findFirst();
	}

	/**
	 * Groups that somebody belongs to.
	 * @param person who
	 * @return by name
	 */
	public List<Group> ofPerson(PersonId person) {
		return whole(this.table.ofPerson(person));
	}

	/**
	 * Which groups people belong to.
	 * @param people who, at most 10,000
	 * @return groups by person, without those who belong to none
	 */
	public Map<PersonId, Set<GroupId>> ofPeople(Collection<PersonId> people) {
		return this.table.ofPeople(people)
			.stream()
			.collect(Collectors.groupingBy(MemberRow::person,
					Collectors.mapping(MemberRow::group, Collectors.toCollection(LinkedHashSet::new))));
	}

	/**
	 * The groups that look after a site.
	 * @param site which
	 * @return in no order
	 */
	public List<GroupId> lookingAfter(SiteId site) {
		return this.table.lookingAfter(site);
	}

	/** The sites of some groups, by name. */
	Map<GroupId, List<GroupSite>> sites(Collection<GroupId> groups) {
		List<SiteRow> given = this.table.sites(groups);
		Map<SiteId, Site> known = named(given);
		return groups.stream().collect(Collectors.toMap(Function.identity(), (group) -> shown(group, given, known)));
	}

	private Map<SiteId, Site> named(List<SiteRow> given) {
		return this.register.find(given.stream().map(SiteRow::site).distinct().toList())
			.stream()
			.collect(Collectors.toMap(Site::id, Function.identity()));
	}

	private static List<GroupSite> shown(GroupId group, List<SiteRow> given, Map<SiteId, Site> sites) {
		return given.stream()
			.filter((one) -> one.group().equals(group) && sites.containsKey(one.site()))
			.map((one) -> shown(one, Objects.requireNonNull(sites.get(one.site()))))
			.sorted(Comparator.comparing(GroupSite::name))
			.toList();
	}

	private List<Group> whole(List<GroupRow> rows) {
		if (rows.isEmpty()) {
			return List.of();
		}
		List<GroupId> ids = rows.stream().map(GroupRow::id).toList();
		List<MemberRow> members = this.table.members(ids);
		Map<PersonId, Person> known = this.people.find(members.stream().map(MemberRow::person).distinct().toList());
		List<SiteRow> given = this.table.sites(ids);
		Map<SiteId, Site> sites = named(given);
		return rows.stream()
			.map((row) -> new Group(row.id(), row.name(), row.about(), row.zone(), row.meetingPoint(), row.weekdays(),
					row.begins(), row.ends(), row.capacity(), row.away(), row.terms(),
					members.stream()
						.filter((one) -> one.group().equals(row.id()) && known.containsKey(one.person()))
						.map((one) -> new Member(one.person(), Objects.requireNonNull(known.get(one.person())).name(),
								one.leads(), one.skills(), one.weekdays(), one.away()))
						.sorted(Comparator.comparing((Member one) -> !one.leads()).thenComparing(Member::name))
						.toList(),
					shown(row.id(), given, sites)))
			.toList();
	}

	private static GroupSite shown(SiteRow row, Site site) {
		boolean exact = !row.address().isEmpty();
		return new GroupSite(row.site(), site.owner(), site.name(), exact ? row.address() : roughly(site), exact);
	}

	/** A tenth of a degree: about 11 km from north to south. */
	private static String roughly(Site site) {
		String near = "near " + new Formats(0).position(Math.round(site.point().latitude() * 10) / 10.0,
				Math.round(site.point().longitude() * 10) / 10.0);
		return site.county().isBlank() ? near : site.county() + ", " + near;
	}

}
