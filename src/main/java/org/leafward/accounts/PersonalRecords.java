package org.leafward.accounts;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.leafward.measure.BadInput;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** All that is kept about a person, whichever module keeps it. */
@Service
public class PersonalRecords {

	private final ObjectProvider<PersonalData> parts;

	private final AuditLog audit;

	PersonalRecords(ObjectProvider<PersonalData> parts, AuditLog audit) {
		this.parts = parts;
		this.audit = audit;
	}

	private List<PersonalData> higherFirst() {
		return this.parts.stream().sorted(Comparator.comparingInt(PersonalData::order)).toList();
	}

	private List<PersonalData> lowerFirst() {
		return this.parts.stream().sorted(Comparator.comparingInt(PersonalData::order).reversed()).toList();
	}

	/**
	 * All that is kept about a person, secrets excepted.
	 * @param person who
	 * @return rows by name of the table
	 */
	@Transactional(readOnly = true)
	public Map<String, List<Map<String, Object>>> of(PersonId person) {
		Map<String, List<Map<String, Object>>> all = new LinkedHashMap<>();
		lowerFirst().forEach((part) -> all.putAll(part.of(person)));
		return all;
	}

	/**
	 * Files that a person takes along beside the tables.
	 * @param person who
	 * @return contents by file name
	 */
	@Transactional(readOnly = true)
	public Map<String, byte[]> files(PersonId person) {
		Map<String, byte[]> all = new TreeMap<>();
		lowerFirst().forEach((part) -> all.putAll(part.files(person)));
		return all;
	}

	/**
	 * Brings back what somebody took along: all of it, or nothing when something can't be
	 * used.
	 * @param person whose it becomes
	 * @param brought the rows
	 * @throws BadInput with the place of the first row that can't be used
	 */
	@Transactional
	public void bring(PersonId person, Brought brought) {
		lowerFirst().forEach((part) -> part.bring(person, brought));
	}

	/**
	 * Deletes all that is kept about the person who asks for it, and notes that somebody
	 * went.
	 * @param person who
	 */
	@Transactional
	public void leave(PersonId person) {
		// Before they are gone; the entry loses the name with them.
		this.audit.note(Deed.DELETED, null, "");
		forget(person);
	}

	/**
	 * Deletes all that is kept about a person, and the person.
	 * @param person who
	 */
	@Transactional
	public void forget(PersonId person) {
		higherFirst().forEach((part) -> part.forget(person));
	}

	/**
	 * Makes one person of two; what is left of the first is deleted.
	 * @param from who has something
	 * @param into who gets it
	 */
	@Transactional
	public void merge(PersonId from, PersonId into) {
		lowerFirst().forEach((part) -> part.handOver(from, into));
		forget(from);
	}

}
