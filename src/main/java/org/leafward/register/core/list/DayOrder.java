package org.leafward.register.core.list;

/** What comes first in a date such as 3/4/2021. */
public enum DayOrder {

	/** Nobody said. */
	UNKNOWN,

	/** 3/4/2021 is 4 March. */
	MONTH_FIRST,

	/** 3/4/2021 is 3 April. */
	DAY_FIRST

}
