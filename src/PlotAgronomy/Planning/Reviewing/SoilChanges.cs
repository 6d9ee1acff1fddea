using System.Collections.Immutable;
using PlotAgronomy.Liming;
using PlotAgronomy.Records;

namespace PlotAgronomy.Planning;

/// <summary>The newest report, and the lime that is on the plot already.</summary>
internal static class SoilChanges
{
    internal static IEnumerable<PlanChange> Of(PlotPlan last, PlotBook book, DateOnly on)
    {
        var newest = book.Of<SoilReportEntry>(last.Plot.Name).LastOrDefault(r => r.On <= on && r.On > last.Report?.SampledOn);
        var plan = newest is null ? last : Renewed(last, newest);
        if (newest is not null)
        {
            yield return new()
            {
                What = "soil report",
                From = FieldWriter.Of(last.Report!.SampledOn!.Value),
                To = FieldWriter.Of(newest.On),
                Reason = "The book has a newer report of this plot; what an older one asked for or advised is dropped with it.",
                Entries = [newest],
                Apply = p => Renewed(p, newest),
            };
        }

        if (Lime(plan, book, on) is { } lime)
        {
            yield return lime;
        }
    }

    /// <summary>The new report in place of the old one, with what was printed beside it and counted from it.</summary>
    private static PlotPlan Renewed(PlotPlan plan, SoilReportEntry newest) =>
        plan with
        {
            Report = newest.Report with { SampledOn = newest.On },
            Printed = null,
            EarlierLime = null,
            LimeSinceSample = null,
        };

    /// <summary>Lime after the sample is taken off the need; of lime before it the next plan is told, where it still
    /// works.</summary>
    private static PlanChange? Lime(PlotPlan plan, PlotBook book, DateOnly on)
    {
        var need = plan.Solve().Lime.Told.Need;
        if (need is null || plan.Report?.SampledOn is not { } sampled)
        {
            return null;
        }

        ImmutableArray<LimeEntry> all =
        [
            .. book.Of<LimeEntry>(plan.Plot.Name)
                .Where(l => l.On <= on && l.Material.Neutralizes && need.WhyNotCounted(l.Material) is null),
        ];
        ImmutableArray<LimeEntry> since = [.. all.Where(l => l.On >= sampled)];
        if (since.IsEmpty)
        {
            return Before(plan, need, sampled, [.. all.Where(l => l.On < sampled && l.On.AddYears(1) > sampled)]);
        }

        var rate = RateOf(plan, need, since);
        return plan.LimeSinceSample == rate
            ? null
            : new()
            {
                What = "lime since the sample",
                From = plan.LimeSinceSample is { } known ? Print(known) : "none",
                To = Print(rate),
                Reason = "It is on the plot already, in the lime of the rate, and is not bought again.",
                Entries = [.. since],
                Apply = p => p with { LimeSinceSample = rate },
            };
    }

    private static PlanChange? Before(PlotPlan plan, LimeRate need, DateOnly sampled, ImmutableArray<LimeEntry> limed)
    {
        if (limed.IsEmpty)
        {
            return null;
        }

        var rate = RateOf(plan, need, limed);
        var spread = limed[^1].On;
        double months = (sampled.DayNumber - spread.DayNumber) / ExactUnits.DaysPerMonth;
        return new()
        {
            What = "lime before the sample",
            From = plan.EarlierLime is { } known ? Print(known.Rate) : "none",
            To = $"{Print(rate)}, {FieldWriter.Of(spread)}",
            Reason = "Lime of the year before the sample still works; the rate is told of it.",
            Entries = [.. limed],
            Apply = p => p with { EarlierLime = EarlierLime.FromRate(rate, months) },
        };
    }

    private static ApplicationRate RateOf(PlotPlan plan, LimeRate need, ImmutableArray<LimeEntry> limed) =>
        ApplicationRate.FromPoundsPerAcre(
            Math.Round(
                LimeBalance
                    .For(need, plan.Plot.Area, limed.Select(l => LimeApplication.FromMass(l.Weight, l.Material, l.On)))
                    .AppliedRate.PoundsPerAcre,
                MidpointRounding.AwayFromZero
            )
        );

    private static string Print(ApplicationRate rate) => Amounts.Print(rate, "ton/ac", 2);
}
