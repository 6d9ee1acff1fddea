using System.Collections.Immutable;
using PlotAgronomy.Liming;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Tests.Liming;

/// <summary>A hundredth in a reading moves a recommendation by no more than the institution rounds, but at the limits that its
/// publication prints.</summary>
public class LimeStepTests
{
    private const double Step = 0.01;

    /// <summary>Printed limits: North Carolina reports none below 0.3 ton (LIME-S7); Pennsylvania's field rule changes at 4.0 meq
    /// (LIME-S8) and its turf table goes by whole thousands of lb/ac (LIME-S12); Vermont's table has steps of pH and aluminum
    /// (LIME-S45); tri-state, and the regional table of its states, lime 0.2 below the target (LIME-S1).</summary>
    private static bool IsPrinted(LimeMethod method, double from, double to, double before, double after, double target, bool isReading)
    {
        bool Passes(params double[] limits) => limits.Any(l => from <= l + 1e-9 && to >= l - 1e-9);
        return method.Id switch
        {
            "north-carolina-mehlich" => Math.Min(before, after) == 0 && Math.Max(before, after) <= 600 + 1e-6,
            "pennsylvania-field" => isReading && Passes(4.0),
            "vermont-aluminum" => isReading ? Passes(40, 70, 100, 150, 200, 250, 300) : Passes(5.55, 6.15, 6.75),
            _ => false,
        } || (!isReading && (Passes(target) || (method.NoLimeWithinPh is { } margin && Passes(target - margin))));
    }

    public static TheoryData<string> Methods => [.. LimeMethod.All.Concat(LimeMethod.Unchecked).Select(m => m.Id)];

    [Theory, MemberData(nameof(Methods))]
    public void A_hundredth_in_the_reading_jumps_only_at_printed_limits(string id)
    {
        var method = LimeMethod.Find(id);
        foreach (double target in Targets(method))
        {
            double low = Math.Max(method.LowestReading, LimeSamples.LeastReading(method)), high = Math.Min(method.HighestReading + 0.3, low + 40);
            if (method.Reads.StartsWith("water pH", StringComparison.Ordinal))
            {
                continue; // swept as the soil's own pH
            }

            HoldsOver(method, target, low, high, reading => LimeSamples.Soil(method, 5.2 < target ? 5.2 : target - 0.5, reading), isReading: true);
        }
    }

    [Theory, MemberData(nameof(Methods))]
    public void A_hundredth_in_the_pH_jumps_only_at_printed_limits(string id)
    {
        var method = LimeMethod.Find(id);
        foreach (double target in Targets(method))
        {
            foreach (double share in new[] { 0.2, 0.5, 0.8 })
            {
                double reading = method.LowestReading + (share * (Math.Min(method.HighestReading, method.LowestReading + 40) - method.LowestReading));
                HoldsOver(method, target, 4.4, target + 0.1, ph => LimeSamples.Soil(method, ph, reading), isReading: false);
            }
        }
    }

    private static ImmutableArray<double> Targets(LimeMethod method) => method.TargetPhs.IsEmpty ? [5.5, 6.0, 6.5] : method.TargetPhs;

    private static void HoldsOver(LimeMethod method, double target, double low, double high, Func<double, PlotSoil> soil, bool isReading)
    {
        double? Rate(double at) => method.NeedFor(soil(at), target).Published?.OfBasis.PoundsPerAcre;
        double? Exact(double at) => method.NeedFor(soil(at), target).Rate?.OfBasis.PoundsPerAcre;
        double rounding = method.Id == "pennsylvania-turf" ? 1310 : method.Institution.LimeRounding?.Step.PoundsPerAcre ?? 0;
        int count = (int)Math.Round((high - low) / Step);
        double?[] rates = [.. Enumerable.Range(0, count + 1).Select(i => Rate(low + (i * Step)))];
        double?[] exact = [.. Enumerable.Range(0, count + 1).Select(i => Exact(low + (i * Step)))];
        for (int i = 0; i < count; i++)
        {
            if (rates[i] is not { } before || rates[i + 1] is not { } after)
            {
                continue;
            }

            // The slope the publication prints: the change over the tenth around, of which a jump would be only a tenth, and the next steps.
            double? slope = null;
            for (int k = Math.Max(0, i - 10); k <= Math.Min(count - 10, i); k++)
            {
                slope = exact[k] is { } a && exact[k + 10] is { } b ? Math.Max(slope ?? 0, Math.Abs(b - a) / 10) : slope;
            }

            foreach (int k in new[] { i - 1, i + 1 })
            {
                slope = k >= 0 && k < count && exact[k] is { } a && exact[k + 1] is { } b ? Math.Max(slope ?? 0, Math.Abs(b - a)) : slope;
            }

            double at = low + (i * Step);
            bool isStep = slope is not { } known || Math.Abs(after - before) <= rounding + (1.5 * known) + 1e-6;
            Assert.True(
                isStep || IsPrinted(method, at, at + Step, before, after, target, isReading),
                FormattableString.Invariant($"{method.Id} to {target}, {(isReading ? "reading" : "pH")} {at:0.00}: {before:0.#} and {after:0.#} lb/ac")
            );
        }
    }
}
