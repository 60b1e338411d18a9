-- A row is claimed a million times a morning. Its claim changes no column of an index, so PostgreSQL writes the row beside
-- itself and leaves the indexes alone (heap-only tuples); that needs room on its page.
alter table reminders.reminder
	drop constraint reminder_check,
	drop constraint reminder_state_check,
	drop constraint reminder_mail_id_fkey;
update reminders.reminder set state = 'PENDING' where state = 'CLAIMED';
alter table reminders.reminder
	add check (state in ('PENDING', 'SENT', 'KEPT', 'FAILED', 'EXPIRED', 'WITHDRAWN')),
	add check (claimed_by is null or state = 'PENDING'),
	set (fillfactor = 70);
drop index reminders.reminder_claimed;
-- Only the weekly tidying looked there, and every change of a row paid for it.
drop index reminders.reminder_ended;

-- The message of a row: written on it, or named by its claim.
create function reminders.message_of(message uuid, claim uuid, person uuid, channel text, bundle text) returns uuid
language sql immutable parallel safe
return coalesce(message, md5(claim::text || person::text || channel || bundle)::uuid);
