create trigger journal_keeps before update on journal
begin
    select raise(abort, 'the journal only grows: an edit is never changed');
end;

create trigger journal_grows before delete on journal
begin
    select raise(abort, 'the journal only grows: an edit is never taken out');
end;
