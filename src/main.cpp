// dyeleaf: reference cards, shaker-jar labels and skein tags from a dyer's own records.
#include "cli/commands.h"
#include "cli/data_folder.h"
#include "cli/options.h"
#include "cli/report.h"

#include <algorithm>
#include <cstdlib>
#include <exception>
#include <iostream>
#include <new>
#include <unistd.h>

namespace {

std::optional<std::string> variable(const char* name) {
    const char* value = std::getenv(name);
    return value == nullptr || *value == '\0' ? std::nullopt : std::optional<std::string>{value};
}

int start(int count, char** words) {
    using namespace dyeleaf;
    const auto read = read_command_line({words + std::min(count, 1), words + count}, DYELEAF_VERSION);
    if (const auto* answer = std::get_if<Answer>(&read)) {
        std::cout << answer->text;
        return all_well;
    }
    if (const auto* misuse = std::get_if<Misuse>(&read)) {
        std::cerr << misuse->text;
        return wrong_usage;
    }
    Diagnostics diagnostics;
    const auto program = program_file(count > 0 ? words[0] : "");
    const auto data = find_data_folder(variable("DYELEAF_HOME"), program, DYELEAF_SOURCE_FOLDER, diagnostics);
    if (!data) {
        std::cerr << describe_all(diagnostics);
        return problems_found;
    }
    const Surroundings surroundings{*data, variable("SOURCE_DATE_EPOCH"), isatty(STDERR_FILENO) == 1};
    return run(std::get<Command>(read), surroundings, std::cout, std::cerr);
}

} // namespace

int main(int count, char** words) {
    try {
        return start(count, words);
    } catch (const std::bad_alloc&) {
        std::cerr << "dyeleaf: there is not enough memory for this\n";
    } catch (const std::exception& error) {
        std::cerr << "dyeleaf: something went wrong inside: " << error.what() << "\n";
    }
    return dyeleaf::problems_found;
}
