// dyeleaf: reference cards, shaker-jar labels and skein tags from a dyer's own records.
#include "cli/commands.h"
#include "cli/data_folder.h"
#include "cli/options.h"
#include "cli/report.h"

#include <algorithm>
#include <csignal>
#include <cstdlib>
#include <exception>
#include <fcntl.h>
#include <iostream>
#include <new>
#include <unistd.h>

namespace {

std::optional<std::string> variable(const char* name) {
    const char* value = std::getenv(name);
    return value == nullptr || *value == '\0' ? std::nullopt : std::optional<std::string>{value};
}

// Otherwise the first file that is written could take the place of a closed output, and be told what belongs there.
void open_what_is_closed() {
    for (const int descriptor : {STDIN_FILENO, STDOUT_FILENO, STDERR_FILENO})
        if (fcntl(descriptor, F_GETFD) == -1) static_cast<void>(open("/dev/null", O_RDWR));
}

// A disk that is full may hold back what was said as well.
int finish(int status) {
    if (std::cout.flush()) return status;
    std::cerr << "error: not all that was to be shown could be written\n"
                 "  help: make room on the disk, or write it somewhere else\n";
    return dyeleaf::problems_found;
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
    open_what_is_closed();
    std::signal(SIGXFSZ, SIG_IGN); // a file too large for this computer's limits is told of like any other fault
    try {
        return finish(start(count, words));
    } catch (const std::bad_alloc&) {
        std::cerr << "dyeleaf: there is not enough memory for this\n";
    } catch (const std::exception& error) {
        std::cerr << "dyeleaf: something went wrong inside: " << error.what() << "\n";
    }
    return dyeleaf::problems_found;
}
