package org.leafward.reminders;

import java.util.List;
import org.leafward.accounts.EmailAddress;
import org.leafward.measure.Given;
import org.leafward.measure.NotThere;
import org.leafward.reminders.store.SuppressionTable;
import org.springframework.stereotype.Service;

/** The addresses that get no reminders, for the operator. */
@Service
public class Suppressions {

	private final SuppressionTable table;

	Suppressions(SuppressionTable table) {
		this.table = table;
	}

	/**
	 * All of them.
	 * @param page from 0 to 100,000
	 * @param size 1 to 200
	 * @return the newest first
	 * @throws org.leafward.measure.BadInput if page or size are out of range
	 */
	public List<Suppressed> list(int page, int size) {
		return this.table.list((long) Given.page(page) * Given.size(size), size);
	}

	/**
	 * Sends no more reminders to an address.
	 * @param address the address
	 * @param reason why, one line
	 * @throws org.leafward.measure.BadInput when it is no address
	 */
	public void suppress(String address, String reason) {
		this.table.suppress(EmailAddress.read("address", address), reason);
	}

	/**
	 * Sends to an address again, from the reminders on that are made next.
	 * @param address the address
	 * @throws NotThere if it gets reminders anyway
	 */
	public void lift(String address) {
		if (!this.table.lift(address)) {
			throw new NotThere("There is no such address among those that get no reminders.");
		}
	}

}
