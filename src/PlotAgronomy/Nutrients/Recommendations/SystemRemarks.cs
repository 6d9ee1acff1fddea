using System.Collections.Immutable;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Nutrients;

/// <summary>Remarks on a system as a whole: its edition, its numbers, the depth and the yield it is asked for.</summary>
internal static class SystemRemarks
{
    internal static IEnumerable<Finding> For(SystemRecord system, SystemRequest question, ImmutableArray<NutrientNeed> needs)
    {
        if ((system.NextId ?? system.NextInWords) is { } next)
        {
            yield return FindingCatalog.Create(
                NutrientCodes.SystemSuperseded,
                ("system", system.Name),
                ("edition", system.Edition),
                ("next", next)
            );
        }

        if (needs.IsEmpty)
        {
            yield break;
        }

        if (needs.Any(n => n.Status == DataStatus.Memory))
        {
            yield return MemoryGate.FindingFor(system.Name, system.Sources);
        }

        if (DepthOutside(system, question.Report.SampledDepth) is { } depth)
        {
            yield return depth;
        }

        if (UnusualYield(question.Crop) is { } yield)
        {
            yield return yield;
        }
    }

    private static Finding? DepthOutside(SystemRecord system, Length? sampled)
    {
        if (sampled is not { } depth)
        {
            return null;
        }

        double inches = depth.Inches;
        double leeway = NutrientConstants.All["sample-depth-leeway"];
        return inches < system.DepthLowInches - leeway || inches > system.DepthHighInches + leeway
            ? FindingCatalog.Create(
                NutrientCodes.SampleDepth,
                ("system", system.Name),
                ("depth", Amounts.Print(depth, "in", 1)),
                ("low", Amounts.Print(Length.FromInches(system.DepthLowInches), "in", 1)),
                ("high", Amounts.Print(Length.FromInches(system.DepthHighInches), "in", 1))
            )
            : null;
    }

    private static Finding? UnusualYield(CropUse crop) =>
        crop.Yield is { } given && CropRows.UnusualYieldAbove(crop.Row) is { } limit && given.PerAcre > limit
            ? FindingCatalog.Create(
                NutrientCodes.YieldUnusual,
                ("crop", CropRows.WordsFor(crop.Row)),
                ("yield", given.ToString()),
                ("limit", Amounts.Print(limit, 4))
            )
            : null;
}
