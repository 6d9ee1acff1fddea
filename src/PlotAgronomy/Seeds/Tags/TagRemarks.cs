using PlotAgronomy.Reference;

namespace PlotAgronomy.Seeds;

/// <summary>What was assumed or left aside while a tag was read, in its order; the findings are made when asked for.</summary>
internal sealed class TagRemarks
{
    private readonly List<Func<Finding>> remarks = [];

    internal IEnumerable<Finding> All => remarks.Select(remark => remark());

    internal void Assume(Func<string> assumption) =>
        remarks.Add(() => FindingCatalog.Create(SeedCodes.TagAssumption, ("assumption", assumption())));

    internal void LeaveAside(string line) => remarks.Add(() => FindingCatalog.Create(SeedCodes.TagLineAside, ("line", line)));

    internal void PureLiveDiffers(double printedPercent, double foundPercent, string kind) =>
        remarks.Add(() =>
            FindingCatalog.Create(
                SeedCodes.TagPureLiveDiffers,
                ("printed", Amounts.Print(printedPercent, 2)),
                ("found", Amounts.Print(foundPercent, 2)),
                ("kind", kind)
            )
        );
}
