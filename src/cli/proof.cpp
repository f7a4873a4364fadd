#include "cli/proof.h"

#include "base/words.h"
#include "cli/job.h"
#include "cli/report.h"
#include "layout/layout.h"
#include "sheets/refusal.h"
#include "sheets/stock.h"

#include <set>
#include <sstream>
#include <utility>

namespace dyeleaf {

namespace {

// "tags.yaml:12".
std::string place_of(const Spot& spot) {
    return spot.file && spot.line > 0 ? " (" + spot.file->name + ":" + std::to_string(spot.line) + ")" : "";
}

// A complaint below its label's name needs no name in front.
std::string without_name(const std::string& message, const std::string& id) {
    const std::string opening = in_quotes(id) + ": ";
    return message.starts_with(opening) ? message.substr(opening.size()) : message;
}

class ProofList {
  public:
    ProofList(const Job& job, const Printing& printing, Diagnostics& diagnostics)
        : job_(job), printing_(printing), diagnostics_(diagnostics), left_(job.copies) {}

    std::string write() {
        std::vector<std::vector<std::string>> rows = {{"SHEET", job_.stock.cells ? "CELL" : "PLACE", "LABEL", "SIZE"}};
        std::vector<std::vector<std::string>> below = {{}};
        for (std::size_t sheet = 0; sheet < job_.plans.size(); ++sheet) {
            for (const Slot& slot : job_.plans[sheet].slots) {
                rows.push_back({std::to_string(sheet + 1), std::to_string(slot.number), label_words(slot.label),
                                in_words(job_.trims[slot.label])});
                below.push_back(said_.insert(slot.label).second ? complaints(slot.label) : std::vector<std::string>{});
            }
        }
        std::string text;
        std::istringstream lines{table(rows)};
        std::string line;
        for (const auto& told : below) {
            std::getline(lines, line);
            text += line + "\n";
            for (const std::string& complaint : told)
                text += "           " + complaint + "\n";
        }
        return text;
    }

    [[nodiscard]] const Diagnostics& told() const { return told_; }
    [[nodiscard]] const std::set<std::string>& known() const { return known_; }

  private:
    // "26-117:3", or "sloe, 2 of 4".
    std::string label_words(std::size_t label) {
        const int copies = job_.copies[label];
        const int number = copies - left_[label]-- + 1;
        const std::string id = job_.items[label].id;
        return copies == 1 ? id : id + ", " + std::to_string(number) + " of " + std::to_string(copies);
    }

    // What is wrong with the record behind a label and with the label itself; said of the first one it is true of.
    std::vector<std::string> complaints(std::size_t label) {
        const Item item = job_.items[label];
        Diagnostics own;
        if (!job_.design.grouping)
            make_items(job_.records, job_.design.items, std::nullopt, Selection{{item.id}}, printing_, own);
        place_label(job_.design, item, {job_.trims[label].size, job_.trims[label].sector}, job_.typesetter, own);
        std::vector<std::string> texts;
        for (Diagnostic& diagnostic : own.sorted()) {
            if (!known_.insert(diagnostic.message).second) continue;
            const bool is_error = diagnostic.severity == Severity::error;
            texts.push_back((is_error ? "error: " : "warning: ") + without_name(diagnostic.message, item.id) +
                            place_of(diagnostic.spot));
            told_.add(diagnostic);
            if (is_error) diagnostics_.add(std::move(diagnostic));
        }
        return texts;
    }

    const Job& job_;
    const Printing& printing_;
    Diagnostics& diagnostics_;
    std::vector<int> left_; // copies of each still to be listed
    std::set<std::size_t> said_;
    std::set<std::string> known_;
    Diagnostics told_;
};

} // namespace

std::optional<std::string> proof(const Render& request, const Library& library, const Date& today,
                                 Diagnostics& diagnostics) {
    Diagnostics of_all;
    const auto job = prepare(request, library, today, of_all);
    std::string text;
    std::set<std::string> told;
    if (job) {
        const Printing printing = job->languages.printing(today, request.ink);
        ProofList list{*job, printing, diagnostics};
        const std::string labels = job->plans.empty() ? std::string{} : list.write();
        text = job->design.name + ": " + summary(*job) +
               (list.told().sorted().empty() ? "" : ", " + count_problems(list.told())) + "\n";
        for (const std::string& remark : remarks(*job, request))
            text += remark + "\n";
        if (!labels.empty()) text += "\n" + labels;
        told = list.known();
    }
    for (Diagnostic& diagnostic : of_all.sorted()) {
        if (!told.contains(diagnostic.message)) diagnostics.add(std::move(diagnostic));
    }
    return job ? std::optional{text} : std::nullopt;
}

} // namespace dyeleaf
