using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Planning;

/// <summary>How what stands on the plot is ended before it is sown.</summary>
internal static class CoverSteps
{
    private static readonly Table<Row> Rows = new("Planning/Data/cover-steps.csv", Row.FromCsv);

    /// <summary>The steps for a plan; none where nothing stands that has to go. While the way of planting is not settled, as for
    /// worked ground.</summary>
    internal static IEnumerable<string> Of(PlotPlan plan) =>
        Rows
            .Rows.Where(r => r.Cover == plan.Plot.Cover && r.Methods.Contains(plan.Method ?? PlantingMethod.TilledAndPacked))
            .Select(r => r.Text);

    private sealed record Row(GroundCover Cover, ImmutableArray<PlantingMethod> Methods, string Text)
    {
        internal static Row FromCsv(CsvRow row)
        {
            _ = (row.Text("id"), row.Origin());
            return new(row.Choice<GroundCover>("cover"), row.Choices<PlantingMethod>("methods"), row.Text("text"));
        }
    }
}
