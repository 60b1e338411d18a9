package org.leafward.accounts;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** All that is kept about a person, whichever module keeps it. */
@Service
public class PersonalRecords {

	private final ObjectProvider<PersonalData> parts;

	PersonalRecords(ObjectProvider<PersonalData> parts) {
		this.parts = parts;
	}

	private List<PersonalData> parts() {
		return this.parts.stream().sorted(Comparator.comparingInt(PersonalData::order)).toList();
	}

	/**
	 * All that is kept about a person, secrets excepted.
	 * @param person who
	 * @return the parts by name, accounts first
	 */
	@Transactional(readOnly = true)
	public Map<String, Object> of(PersonId person) {
		Map<String, Object> all = new LinkedHashMap<>();
		List<PersonalData> from = parts();
		for (int i = from.size() - 1; i >= 0; i--) {
			all.put(from.get(i).part(), from.get(i).of(person));
		}
		return all;
	}

	/**
	 * Deletes all that is kept about a person, and the person.
	 * @param person who
	 */
	@Transactional
	public void forget(PersonId person) {
		parts().forEach((part) -> part.forget(person));
	}

	/**
	 * Makes one person of two; what is left of the first is deleted.
	 * @param from who has something
	 * @param into who gets it
	 */
	@Transactional
	public void merge(PersonId from, PersonId into) {
		parts().forEach((part) -> part.handOver(from, into));
		forget(from);
	}

}
