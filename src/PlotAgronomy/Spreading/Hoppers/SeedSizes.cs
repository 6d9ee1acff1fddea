using System.Collections.Immutable;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.Spreading;

/// <summary>How large kinds of seed are beside each other.</summary>
internal static class SeedSizes
{
    /// <summary>Whether sizes are diameters; where one is not known, all are taken from the weights of the seeds.</summary>
    internal static bool AreMeasured(IEnumerable<PassKind> kinds) => kinds.All(k => k.Diameter is not null);

    /// <summary>The size by which a rule compares kinds.</summary>
    internal static Func<PassKind, double> Measure(IReadOnlyList<PassKind> kinds, SizeRule rule)
    {
        bool measured = AreMeasured(kinds);
        double Diameter(PassKind kind) => measured ? kind.Diameter!.Value.Millimeters : SeedPasses.SizeOf(kind.MilligramsPerSeed);
        if (rule == SizeRule.DiameterTwoToOne)
        {
            return Diameter;
        }

        var without = kinds.FirstOrDefault(k => k.Density is null);
        return without is null
            ? kind => Diameter(kind) * kind.Density!.Value.KilogramsPerCubicMeter
            : throw new ArgumentException(
                $"The density rule needs the density of every kind; '{without.Name}' has none.",
                nameof(kinds)
            );
    }

    /// <summary>Largest to smallest density times diameter; null when a density is not known.</summary>
    internal static double? ThrowRatio(ImmutableArray<PassKind> kinds)
    {
        if (kinds.Any(k => k.Density is null))
        {
            return null;
        }

        var flight = Measure(kinds, SizeRule.DensityTimesDiameter);
        return kinds.Max(flight) / kinds.Min(flight);
    }
}
