// Which labels look otherwise than when they were last noted as printed.
#pragma once

#include "base/date.h"
#include "base/diagnostic.h"
#include "cli/job.h"

namespace dyeleaf {

// With --changed, takes out of the job's items and trims what the note beside the records knows to look the same; with
// --remember, leaves the note's new text in the job. The day of printing and a card's number in its set do not count as
// a change; what the layout, the language, --mono and --save-ink do to a label does.
void compare_with_note(Job& job, const Render& request, const Date& today, Diagnostics& diagnostics);

} // namespace dyeleaf
