using System.Collections.Immutable;

namespace PlotAgronomy.Records;

/// <summary>Entries in a few words, as an owner would tell them.</summary>
internal static class EntryWords
{
    /// <summary>What several of its sort are called.</summary>
    internal static string Sort(BookEntry entry) =>
        entry switch
        {
            SoilReportEntry => "soil reports",
            NeedEntry => "needs",
            LimeEntry => "limings",
            FertilizerEntry => "dressings of fertilizer",
            SowingEntry => "sowings",
            RainEntry => "rain readings",
            CountEntry => "counts",
            WeedEntry => "sights of weeds",
            ClippingEntry => "clippings",
            BrowseEntry => "looks at browse",
            CameraEntry => "camera counts",
            _ => "notes",
        };

    internal static string Of(BookEntry entry)
    {
        string own = entry switch
        {
            SoilReportEntry report => $"soil report of {report.Report.Laboratory}: {Ph(report.Report)}",
            NeedEntry need => $"needed: {Needed(need)}",
            LimeEntry lime => $"lime: {Loads(lime.Loads)} of {lime.Material.Name}",
            FertilizerEntry spread => $"fertilizer: {Loads(spread.Loads)} of {spread.Product.Name}",
            SowingEntry sown => $"sown: {string.Join(", ", sown.Lots.Select(Lot))}{Passes(sown)}",
            RainEntry rain => $"rain: {Amounts.Print(rain.Amount, "in", 2)}{Days(rain.Days)}",
            CountEntry count =>
                $"counted: {count.Kind?.ShortName ?? "everything"}, {Amounts.Print(count.Plants.Average(), 1)} plants in "
                    + $"{Amounts.Print(count.Hoop, "ft2", 2)}, {Amounts.Print(count.Plants.Length, 0)} hoops",
            WeedEntry weeds => $"weeds: {weeds.Seen}{Cover(weeds.Cover)}",
            ClippingEntry clipped => $"cages: {CageOutcome.Of(clipped)}",
            BrowseEntry browse =>
                $"browse: {browse.Kind?.ShortName ?? "the plot"}, {Amounts.Print(BrowsedOf(browse), 0)} % eaten",
            CameraEntry camera => $"camera: {Amounts.Print(camera.Images, 0)} pictures in {Amounts.Print(camera.Days, 0)} days",
            _ => "note",
        };
        string note = entry.Note is { } words ? $"; {words}" : "";
        string place = entry.Corrects is { } id ? $" (in place of {id})" : "";
        return own + note + place;
    }

    private static string Cover(Fraction? cover) => cover is { } part ? $", {Amounts.Print(part, 0)}" : "";

    private static string Ph(SoilReport report) =>
        report.WaterPh is { } ph ? $"pH {Amounts.Print(ph.Value, 1)}" : "no pH in water";

    private static string Needed(NeedEntry need)
    {
        (string Name, ApplicationRate? Rate)[] rates = [("N", need.Nitrogen), ("P2O5", need.Phosphate), ("K2O", need.Potash)];
        return string.Join(
            ", ",
            (need.Lime is { } lime ? new[] { $"lime {lime}" } : []).Concat(
                rates.Where(r => r.Rate is not null).Select(r => $"{r.Name} {Amounts.Print(r.Rate!.Value, "lb/ac", 0)}")
            )
        );
    }

    private static string Loads(ImmutableArray<SpreadLoad> loads) =>
        loads.All(l => l.BagCount is not null)
            ? $"{Amounts.Print(loads.Sum(l => l.BagCount!.Value), 1)} bags, {Amounts.Print(SpreadLoad.WeightOf(loads), "lb", 0)}"
            : Amounts.Print(SpreadLoad.WeightOf(loads), "lb", 0);

    private static string Lot(SownLot lot) => $"{lot.Lot.Kind.ShortName} {Amounts.Print(lot.Used.ToMass(), "lb", 1)}";

    private static string Passes(SowingEntry sown) => sown.Passes is { } count ? $" in {Amounts.Print(count, 0)} pass(es)" : "";

    private static string Days(int days) => days > 1 ? $" in {Amounts.Print(days, 0)} days" : "";

    private static double BrowsedOf(BrowseEntry browse) => BrowseMath.Use([.. browse.PlantsByClass.Select(n => (double)n)]);
}
