#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Do the tests notice a wrong formula? Breaks one place of the statistics at a time in a copy of the sources, builds
and runs the core and reference tests, and expects a failure. By hand: tests/mutants/run.py [FOLDER]; about half a minute
for each on an idle machine. Exit code 1 when a mutant lives or its place is no longer there.
"""
import os, shutil, subprocess, sys

MUTANTS = [  # what is broken, file, text that is there once, text instead
    ("half a tie counts whole", "core/stats/rank_tests.cpp", "+ 0.5 * static_cast<double>(to - from)", "+ 1.0 * static_cast<double>(to - from)"),
    ("ties do not thin the variance of U", "core/stats/rank_tests.cpp", "(all + 1 - ties / (all * (all - 1)))", "(all + 1 + 0 * ties)"),
    ("no continuity correction", "core/stats/rank_tests.cpp", "std::abs(test.u - m * n / 2) - 0.5)", "std::abs(test.u - m * n / 2) - 0.0)"),
    ("one-sided p instead of two-sided", "core/stats/rank_tests.cpp", "2 * normalUpperTail(away / deviation)", "normalUpperTail(away / deviation)"),
    ("Hodges-Lehmann takes the lower middle", "core/stats/rank_tests.cpp", "0.5 * (difference[(pairs - 1) / 2] + difference[pairs / 2])", "difference[(pairs - 1) / 2]"),
    ("its interval is one pair too wide", "core/stats/rank_tests.cpp", "static_cast<std::size_t>(low) - 1;", "std::max(static_cast<std::size_t>(low), std::size_t{2}) - 2;"),
    ("Wilson without the square in the root", "core/stats/binomial.cpp", "share * (1 - share) + square / 4", "share * (1 - share)"),
    ("Clopper-Pearson one hit off", "core/stats/binomial.cpp", "ibetac_inv(x + 1.0, double(n - x)", "ibetac_inv(x + 0.5, double(n - x)"),
    ("gamma with rate for scale", "core/stats/gamma.cpp", "return boost::math::gamma_p(shape, x / scale", "return boost::math::gamma_p(shape, x * scale"),
    ("change point judged without the right-hand stretch", "core/stats/change_point.cpp", "sum * sum * (1.0 / k + 1.0 / (n - k))", "sum * sum * (1.0 / k)"),
    ("penalty of one parameter a level", "core/stats/change_point.cpp", "std::log(n) * 2 * means", "std::log(n) * means"),
    ("median of an even sample from below", "core/stats/order.cpp", "(position - static_cast<double>(below))", "0.0 * (position - static_cast<double>(below))"),
    ("EWMA long-run deviation without the 2 - lambda", "core/analytics/run_length.cpp", "std::sqrt(lambda / (2 - lambda))", "std::sqrt(lambda / 2)"),
    ("CUSUM step forgets k", "core/analytics/run_length.cpp", "const double offset = z - chart.k + mean;", "const double offset = z + mean;"),
    ("EWMA weighs old and new alike", "core/analytics/run_length.cpp", "(1 - lambda) * z / lambda + mean", "z / lambda + mean"),
    ("quadrature weights off", "core/analytics/integral_equation.cpp", "half * 2 / ((1 - x * x) * slope * slope)", "half * 2.001 / ((1 - x * x) * slope * slope)"),
    ("two of three needs two before", "core/analytics/run_rules.cpp", "beyond == 1 && before.outer != 0", "beyond == 1 && before.outer == 3u"),
    ("four of five needs four before", "core/analytics/run_rules.cpp", "std::popcount(before.inner) >= 3", "std::popcount(before.inner) >= 4"),
    ("lower CUSUM adds like the upper", "core/analytics/classical_charts.cpp", "down - (x - target) - k", "down + (x - target) - k"),
    ("individuals limits at two sigma", "core/analytics/classical_charts.cpp", "limits.mean + 3 * limits.meanMovingRange / d2", "limits.mean + 2 * limits.meanMovingRange / d2"),
    ("agreement divides by n", "core/analytics/agreement.cpp", "std::sqrt(squares / (n - 1))", "std::sqrt(squares / n)"),
    ("offset costs half", "core/optics/splice_loss.cpp", "decibelsPerNeper * 2 * meeting.offsetUm", "decibelsPerNeper * meeting.offsetUm"),
    ("one-way reading tilts the wrong way", "core/optics/splice_loss.cpp", "std::log10(to.diameterUm / from.diameterUm)", "std::log10(from.diameterUm / to.diameterUm)"),
    ("two-way mean is the sum", "core/optics/splice_loss.cpp", "0.5 * (decibels(*aToB) + decibels(*bToA))", "1.0 * (decibels(*aToB) + decibels(*bToA))"),
    ("far upper tails lose their digits", "core/stats/normal.cpp", "if (a > 0) return", "if (a > 1e9) return"),
    ("exact null distribution one factor short", "core/stats/rank_tests.cpp", "u >= n + i; --u", "u >= n + i + 1; --u"),
    ("Pettitt's ranks not centred", "core/stats/change_point.cpp", "u += 2 * rank - (n + 1);", "u += 2 * rank - n;"),
    ("median deviation scaled like a mean deviation", "core/stats/order.cpp", "1.482602218505602", "1.253314137315500"),
    ("too few quadrature nodes", "core/analytics/integral_equation.cpp", "return 24 + static_cast<int>(std::ceil(2.5 * widths));", "return 6 + static_cast<int>(std::ceil(0.2 * widths));"),
    ("long run from the right eigenvector", "core/analytics/integral_equation.cpp", "- matrix).transpose().partialPivLu();", "- matrix).partialPivLu();"),
    ("exact variance grows like the deviation", "core/analytics/run_length.cpp", "std::sqrt(1 - share * share)", "std::sqrt(1 - share)"),
    ("a head start never fades", "core/analytics/run_length.cpp", ": limit - offset * share;", ": limit - offset;"),
    ("drift one reading late", "core/analytics/run_length.cpp", "return step(n * slope, z, nodes);", "return step((n - 1) * slope, z, nodes);"),
    ("limit for a run length a thousandth longer", "core/analytics/limit_search.cpp", "- std::log(arl);", "- std::log(1.001 * arl);"),
    ("both sums up are forgotten", "core/analytics/two_sided_cusum.cpp", "+ bothToAxis_ * now.both", ""),
    ("a run on one side one point longer", "core/analytics/run_rules.cpp", "next.run >= rules.sameSide", "next.run > rules.sameSide"),
    ("chain ends a whole step early", "core/analytics/discrete_cusum.cpp", "std::max(0.0, exact - 0.5)", "std::max(0.0, exact - 1.0)"),
    ("falls below zero leave the chain", "core/analytics/discrete_cusum.cpp", "to == 0 ? law.atMost(-from)", "to == 0 ? law.of(-from)"),
    ("a group is its first stream", "core/analytics/several_streams.cpp", "std::pow((*one)[n], count)", "(*one)[n]"),
    ("geometric tail cut off", "core/analytics/several_streams.cpp", "survival[n + 1] / (1 - next)", "survival[n + 1]"),
    ("multivariate EWMA pulls too hard", "core/analytics/several_streams.cpp", "(1 - chart.r) * from / chart.r", "from / chart.r"),
    ("limits of agreement as sure as the mean", "core/analytics/agreement.cpp", "half * std::sqrt(3.0)", "half"),
    ("self-starting score ignores its own mean's error", "core/analytics/agreement.cpp", "std::sqrt(before / (before + 1)) * (x - mean)", "(x - mean)"),
    ("one-way values pass as two-way", "core/analytics/agreement.cpp", "both->ways != optics::Ways::Two || !loss", "!loss"),
    ("gap loss with twice the spread", "core/optics/splice_loss.cpp", "gapUm / (2 * rayleigh)", "gapUm / rayleigh"),
    ("the limit itself is refused", "core/work/acceptance.cpp", "if (loss > rule.perSplice)", "if (loss >= rule.perSplice)"),
    ("mode mismatch forgotten in the simulation", "core/scenario/physics.cpp", "return -20.0 * std::log10(2.0 * wa * wb / squares) +", "return"),
]


def main():
    top = os.path.dirname(os.path.dirname(os.path.dirname(os.path.abspath(__file__))))
    folder = os.path.abspath(sys.argv[1] if len(sys.argv) > 1 else os.path.join(top, "build-mutants"))
    sources, build = os.path.join(folder, "sources"), os.path.join(folder, "build")
    shutil.rmtree(sources, ignore_errors=True)
    listed = subprocess.run(["git", "ls-files"], cwd=top, capture_output=True, text=True, check=True).stdout
    for name in listed.splitlines():
        os.makedirs(os.path.dirname(os.path.join(sources, name)), exist_ok=True)
        shutil.copy2(os.path.join(top, name), os.path.join(sources, name))
    subprocess.run(["cmake", "-S", sources, "-B", build, "-G", "Ninja", "-DARC_WINDOW=OFF"], check=True,
                   stdout=subprocess.DEVNULL)
    programs = ["arc_core_tests", "arc_reference_tests"]

    def make():
        return subprocess.run(["cmake", "--build", build, "--target", *programs], stdout=subprocess.DEVNULL,
                              stderr=subprocess.DEVNULL).returncode == 0

    def killer():
        """The first test that fails, or None."""
        for program in programs:
            try:
                run = subprocess.run([os.path.join(build, "tests", program), "--gtest_brief=1", "--gtest_fail_fast"], capture_output=True,
                                     text=True, timeout=300)
            except subprocess.TimeoutExpired:
                return program + " (no end)"
            failed = [line.split("]")[1].split("(")[0].strip() for line in run.stdout.splitlines() if "FAILED  ]" in line]
            if run.returncode != 0:
                return failed[0] if failed else program
        return None

    if not make() or killer():
        sys.exit("the tests do not pass before anything is broken")
    bad = 0
    for what, name, old, new in MUTANTS:
        path = os.path.join(sources, name)
        text = open(path).read()
        if text.count(old) != 1:
            print(f"OUT OF DATE  {what} ({name})", flush=True)
            bad += 1
            continue
        open(path, "w").write(text.replace(old, new))
        verdict = "does not compile" if not make() else killer()
        open(path, "w").write(text)
        bad += verdict is None or verdict == "does not compile"
        print(f"{'LIVES      ' if verdict is None else 'killed     '}  {what} ({name})" + (f": {verdict}" if verdict else ""), flush=True)
    print(f"{len(MUTANTS) - bad} of {len(MUTANTS)} killed")
    sys.exit(1 if bad else 0)


if __name__ == "__main__":
    main()
