using System.Collections.Immutable;
using System.Globalization;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;
using UnitsNet;

namespace PlotAgronomy.Liming;

/// <summary>What to ask where a method gives a sample no rate.</summary>
internal static class LimeQuestions
{
    private static readonly ImmutableArray<LimingForm> Sold =
    [
        LimingForm.GroundLimestone,
        LimingForm.Pelletized,
        LimingForm.Suspension,
        LimingForm.Hydrated,
        LimingForm.Marl,
        LimingForm.WoodAsh,
    ];

    internal static IEnumerable<OpenQuestion> For(LimeNeed need) =>
        need.Rate is null ? For(need.Method, need.Soil, need.TargetPh, need.Stop) : [];

    private static IEnumerable<OpenQuestion> For(LimeMethod method, PlotSoil soil, double target, LimeStop stop)
    {
        string laboratory = soil.Report.Laboratory;
        if (stop == LimeStop.WaterPhMissing)
        {
            yield return SoilQuestions.WaterPh(soil.Report);
        }

        if (stop == LimeStop.ReadingMissing)
        {
            yield return QuestionCatalog.Ask(
                LimingCodes.AskReading,
                Steps(method.LowestReading, method.HighestReading),
                reading => Amounts.Print(reading, 2),
                ("method", method.Name),
                ("needed", method.Reads),
                ("laboratory", laboratory)
            );
        }

        if (stop == LimeStop.Target && Nearest(method, soil, target) is { } nearest)
        {
            yield return nearest;
        }

        var others = stop == LimeStop.Target ? Serving(soil, target) : Answering(soil, target);
        if (stop is not (LimeStop.WaterPhMissing or LimeStop.ReadingMissing) || !others.IsEmpty)
        {
            yield return QuestionCatalog.Ask(
                LimingCodes.AskMethod,
                others,
                other => other.Name,
                ("method", method.Name),
                ("laboratory", laboratory)
            );
        }
    }

    /// <summary>A method with a target above the one wanted bounds the rate; null where it does not answer there
    /// either.</summary>
    private static OpenQuestion<LimeRate>? Nearest(LimeMethod method, PlotSoil soil, double target) =>
        method.ClosestTarget(target) is var nearest
        && Tolerance.IsAbove(nearest, target)
        && new LimeNeed(method, soil, nearest, null, 0).Rate is { } most
            ? QuestionCatalog.Ask<LimeRate>(
                LimingCodes.AskNearest,
                [],
                rate => rate.AmountInWords,
                ("method", method.Name),
                ("nearest", LimeText.Ph(nearest)),
                ("wanted", LimeText.Ph(target)),
                ("rate", most.AmountInWords),
                ("laboratory", soil.Report.Laboratory)
            )
            : null;

    /// <summary>What a printed rate leaves open: two tons of what, to which pH, how deep? One question while the lime is not
    /// known, for one call answers all three.</summary>
    internal static IEnumerable<OpenQuestion> For(PrintedLimeRate printed, string laboratory)
    {
        (string, string)[] places = [("rate", printed.InAmount), ("laboratory", laboratory)];
        if (printed.UpTo is not null)
        {
            yield return QuestionCatalog.Ask(LimingCodes.AskRange, printed.Ends, printed.AmountOf, places);
        }

        if (printed.Basis is null)
        {
            yield return QuestionCatalog.Ask(
                LimingCodes.AskBasis,
                BasesOf(printed.Institution),
                b => b.Name,
                [.. places, ("missing", printed.MissingInWords)]
            );
            yield break;
        }

        if (printed.TargetPh is null)
        {
            yield return QuestionCatalog.AskNumber(LimingCodes.AskTarget, ph => ph, ph => $"pH {LimeText.Ph(ph)}", places);
        }

        if (printed.Depth is null)
        {
            yield return QuestionCatalog.AskNumber(
                LimingCodes.AskDepth,
                inches => Length.FromInches(inches),
                depth => Amounts.Print(depth, "in", 0),
                places
            );
        }
    }

    /// <summary>What to ask where no method was named and none could be chosen: whose of several, which buffer, or another
    /// reading.</summary>
    internal static IEnumerable<OpenQuestion> ForNoMethod(PlotSoil soil, double targetPh, ImmutableArray<LimeMethod> fitting)
    {
        string laboratory = soil.Report.Laboratory;
        if (fitting.Length > 1)
        {
            yield return QuestionCatalog.Ask(
                LimingCodes.AskWhose,
                [.. fitting.Take(OpenQuestion.MostPlausible)],
                m => m.Name,
                ("laboratory", laboratory)
            );
        }
        else if (soil.Report.UnnamedBufferPh is { } unnamed)
        {
            yield return QuestionCatalog.Ask(
                LimingCodes.AskBuffer,
                ByOwnBuffer(soil, targetPh),
                m => $"{SoilWords.For(m.Buffers[0])} ({m.Name})",
                ("reading", Amounts.Print(unnamed, 2)),
                ("laboratory", laboratory)
            );
        }
        else if (soil.WaterPh is null)
        {
            yield return SoilQuestions.WaterPh(soil.Report);
        }
        else
        {
            ImmutableArray<LimeMethod> others =
            [
                .. LimeMethod
                    .All.Where(m => m.Soils.Contains(soil.Class) && m.Institution != Institution.Practice)
                    .DistinctBy(m => m.Reads)
                    .Take(OpenQuestion.MostPlausible),
            ];
            yield return QuestionCatalog.Ask(
                LimingCodes.AskAnyReading,
                others,
                m => $"{m.Reads} ({m.Name})",
                ("methods", string.Join("; ", others.Select(m => $"{m.Name}, with {m.Reads}"))),
                ("laboratory", laboratory)
            );
        }
    }

    /// <summary>The soil as it would be if its unnamed buffer pH were read in this buffer.</summary>
    internal static SoilReport InBuffer(SoilReport report, SoilBuffer buffer) =>
        report.UnnamedBufferPh is { } reading
            ? report with
            {
                BufferPhs = [.. report.BufferPhs, BufferPh.FromValue(reading, buffer)],
                UnnamedBufferPh = null,
            }
            : report;

    /// <summary>The checked methods that would give the reading a rate, were it read in their buffer.</summary>
    private static ImmutableArray<LimeMethod> ByOwnBuffer(PlotSoil soil, double targetPh) =>
        [
            .. LimeMethod
                .All.Where(m => !m.Buffers.IsEmpty && m.Soils.Contains(soil.Class))
                .Where(m =>
                    m.NeedFor(
                        PlotSoil.For(InBuffer(soil.Report, m.Buffers[0])) with
                        {
                            SoilClass = soil.SoilClass,
                        },
                        m.ClosestTarget(targetPh)
                    ).Rate
                        is not null
                )
                .Take(OpenQuestion.MostPlausible),
        ];

    /// <summary>The lime that nobody offers, or of which no offer can be counted.</summary>
    internal static OpenQuestion<LimingForm> Offer() =>
        QuestionCatalog.Ask(LimingCodes.AskOffer, Sold, form => LimingWords.Forms[form]);

    /// <summary>Days so many months before planting.</summary>
    internal static OpenQuestion<DateOnly> Day(DateOnly planting) =>
        QuestionCatalog.AskNumber(
            LimingCodes.AskDay,
            months => planting.AddMonths(-(int)months),
            day => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)
        );

    /// <summary>The limes that rates are counted in: those of the institution, then the commonest.</summary>
    private static ImmutableArray<LimeBasis> BasesOf(Institution? institution)
    {
        ImmutableArray<LimeBasis> own =
        [
            .. LimeMethod.All.Where(m => m.Institution == institution).Select(m => m.Basis).Distinct(),
        ];
        return
        [
            .. own.Concat(LimeBasis.All.Where(b => b.AskedFirst is not null).OrderBy(b => b.AskedFirst))
                .Distinct()
                .Take(OpenQuestion.MostPlausible),
        ];
    }

    /// <summary>Readings over the whole range of a method, evenly.</summary>
    private static ImmutableArray<double> Steps(double low, double high)
    {
        int last = OpenQuestion.MostPlausible - 1;
        return [.. Enumerable.Range(0, OpenQuestion.MostPlausible).Select(i => i == last ? high : low + (high - low) * i / last)];
    }

    /// <summary>Methods that give this sample a rate to just this pH.</summary>
    private static ImmutableArray<LimeMethod> Serving(PlotSoil soil, double target) =>
        [.. Answering(soil, target).Where(m => Tolerance.AreEqual(m.ClosestTarget(target), target))];

    /// <summary>Methods that give this sample a rate, those of the report's laboratory first.</summary>
    private static ImmutableArray<LimeMethod> Answering(PlotSoil soil, double target) =>
        [
            .. LimeMethod
                .All.Where(m => m.Soils.Contains(soil.Class) && m.Formula.ReadingOf(soil) is not null)
                .Where(m => new LimeNeed(m, soil, m.ClosestTarget(target), null, 0).Rate is not null)
                .OrderByDescending(m => m.Institution.LongestNameIn(soil.Report.Laboratory) > 0)
                .Take(OpenQuestion.MostPlausible),
        ];
}
