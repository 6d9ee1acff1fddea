using FsCheck;
using FsCheck.Fluent;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.Tests.Nutrients;

/// <summary>Generators for the need of a plot.</summary>
public static class NeedArbitraries
{
    private static readonly string[] Kinds = ["ladino-clover", "medium-red-clover", "alfalfa", "cowpea-iron-clay", "oats-winter", "cereal-rye", "winter-wheat", "rape-dwarf-essex", "purple-top-turnip", "chicory", "buckwheat", "annual-ryegrass"];

    public static Arbitrary<BlendDraw> Blends() => Arb.From(
        from count in Gen.Choose(1, 5)
        from start in Gen.Choose(0, Kinds.Length - 1)
        from shares in Gen.Choose(1, 100).ArrayOf(count)
        select new BlendDraw([.. shares.Select((s, i) => KindShare.FromShare(KindCatalog.Standard.Find(Kinds[(start + 5 * i) % Kinds.Length]), s / 100.0))]));
}
