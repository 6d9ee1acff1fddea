using PlotAgronomy.Seeds;
using static PlotAgronomy.PlanFiles.Value;

namespace PlotAgronomy.PlanFiles;

/// <summary>A noxious weed named on a tag.</summary>
internal sealed class NoxiousShape : PlanShape<NoxiousWeed>
{
    private NoxiousShape()
        : base("noxiousWeed", "A noxious weed named on a tag.")
    {
        var name = Required("name", Text("dodder"), "Its name as printed.", w => w.Name);
        const string Count = "Its seeds in a pound of the bag.";
        var seeds = Required("seedsPerPound", NumberTo<double>("noxious-high"), Count, w => w.SeedsPerPound);
        ReadAs(at => new() { Name = at.Get(name), SeedsPerPound = at.Get(seeds) });
    }

    internal static NoxiousShape Shape { get; } = new();
}
