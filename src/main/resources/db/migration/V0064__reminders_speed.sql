-- The claim gives a row the identifier of its message, which is written a moment later.
alter table reminders.reminder drop constraint reminder_mail_id_fkey;
-- Only the weekly tidying looked there, and every change of a row paid for it.
drop index reminders.reminder_ended;
