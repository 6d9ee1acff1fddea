using System.Collections.Immutable;
using PlotAgronomy.Seeds;
using UnitsNet;

namespace PlotAgronomy.Blends;

/// <summary>Kinds that can be sown together: their depths have a part in common and their seeds weigh within ten times of each other.</summary>
public sealed class SowingPass
{
    private const double MilligramsPerPound = 453_592.37;

    private SowingPass(ImmutableArray<BlendPart> parts) => Parts = parts;

    /// <summary>Gets the kinds, heaviest seed first.</summary>
    public ImmutableArray<BlendPart> Parts { get; }

    /// <summary>Gets the shallowest depth that suits all of them; null when no depth is known for any.</summary>
    public Length? Shallowest => KnownDepths.Length == 0 ? null : Length.FromInches(KnownDepths.Max(Top));

    /// <summary>Gets the deepest depth that suits all of them; null when no depth is known for any.</summary>
    public Length? Deepest => KnownDepths.Length == 0 ? null : Length.FromInches(KnownDepths.Min(Bottom));

    private PlantingDepth[] KnownDepths => [.. Parts.Select(p => p.Kind.Depth).OfType<PlantingDepth>()];

    /// <summary>The kinds and their depth.</summary>
    /// <returns>Text such as <c>Winter wheat + Oats at 0.5-1.5 in</c>.</returns>
    public override string ToString() => $"{string.Join(" + ", Parts.Select(p => p.Kind.CommonName))}{(Shallowest is { } from && Deepest is { } to ? $" at {Inches(from)}-{Inches(to)} in" : "")}";

    /// <summary>Groups the kinds, the heaviest seed first; each joins the first pass whose every kind it suits.</summary>
    internal static ImmutableArray<SowingPass> Of(Blend blend)
    {
        var passes = new List<List<BlendPart>>();
        foreach (var part in blend.Parts.OrderBy(p => p.Component.SeedsPerPound).ThenBy(p => p.Kind.Id, StringComparer.Ordinal))
        {
            var fitting = passes.Find(pass => pass[0].Component.Method == part.Component.Method && pass.All(other => Suits(other, part)));
            if (fitting is null)
            {
                passes.Add([part]);
            }
            else
            {
                fitting.Add(part);
            }
        }

        return [.. passes.Select(p => new SowingPass([.. p]))];
    }

    /// <summary>Ranges on a line that meet two by two all meet in one point, so pairs are enough.</summary>
    private static bool Suits(BlendPart heavy, BlendPart light) =>
        SeedMilligrams(heavy) <= SeedMilligrams(light) * BlendRules.PassMassRatio * (1 + CrowdingLimits.Dust)
        && (heavy.Kind.Depth is not { } one || light.Kind.Depth is not { } other || (Top(one) <= Bottom(other) && Top(other) <= Bottom(one)));

    private static double SeedMilligrams(BlendPart part) => MilligramsPerPound / part.Component.SeedsPerPound;

    private static double Top(PlantingDepth depth)
    {
        Length shallowest = depth.Shallowest;
        return shallowest.Inches;
    }

    private static double Bottom(PlantingDepth depth)
    {
        Length deepest = depth.Deepest;
        return deepest.Inches;
    }

    private static string Inches(Length length)
    {
        double inches = length.Inches;
        return Amounts.Print(inches, 3);
    }
}
