using PlotAgronomy.Nutrients;
using PlotAgronomy.Reference;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.Planning;

/// <summary>The crop to name on a laboratory's form.</summary>
internal static class SamplingCrops
{
    private static readonly Table<(HashSet<FunctionalGroup> Groups, string Words)> Rows = new(
        "Planning/Data/sampling-crops.csv",
        r =>
        {
            _ = (r.Text("id"), r.Origin());
            return ([.. r.Choices<FunctionalGroup>("groups")], r.Text("words"));
        }
    );

    /// <summary>The row for food plots, where the place's laboratory has one; else by what the kinds are.</summary>
    internal static string? For(PlotPlan plan)
    {
        if (plan.Kinds.IsEmpty)
        {
            return null;
        }

        var ofPlace = plan.Plot.Place is { } place ? Institution.Serving(place).SelectMany(i => i.NutrientSystems) : [];
        foreach (var row in ofPlace.SelectMany(s => s.Accepts).SelectMany(t => t.Crops))
        {
            if (CropRows.IsWildlifePlot(row))
            {
                return CropRows.WordsFor(row);
            }
        }

        var sown = plan.Kinds.Select(k => k.Kind.Group).ToHashSet();
        return Rows.Rows.First(r => r.Groups.IsSubsetOf(sown)).Words;
    }
}
