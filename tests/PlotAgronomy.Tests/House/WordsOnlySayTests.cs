using System.Reflection;

namespace PlotAgronomy.Tests.House;

/// <summary>The words make no sum and no choice: of other rooms the sheets call only getters of properties, <c>ToString</c>,
/// <c>ShowWork</c> and <c>Amounts</c>.</summary>
public class WordsOnlySayTests
{
    /// <summary>What is called beyond that, by room. The root and the words of a term say things; the others are sums and choices
    /// of the comparisons that belong into <c>Planning/Comparing</c>. A line goes when its call goes; none comes.</summary>
    private static readonly string[] Exceptions =
    [
        // Money, methods of sowing, names and limits as every room says them.
        "ApplicationRate.op_Equality", "ApplicationRate.op_GreaterThan", "Currency.Print", "EnumWords`1.FromNames", "Fraction.op_LessThan",
        "Guard.Between", "Guard.Defined", "Guard.Finite", "PlantNutrients.InFull", "SowingMethods.InWords",
        // Words of a term, or the same value under another name.
        "BulkSeedMass.ToMass", "CropRows.WordsFor", "NutrientWords.InFull", "SoilWords.For", "SoilWords.Printed",
        // The part of an answer for one nutrient.
        "CropRows.IsWildlifePlot", "KindProxy.For", "KindProxy.IsOwn", "NutrientRecommendation.For", "PlotNeed.Find", "Purchase.Balance",
        // To move: the store's bag and plain seed.
        "BagOrPlainSeed.BagCostLine", "BagOrPlainSeed.BagsFor", "BagOrPlainSeed.BagsLine", "BagOrPlainSeed.Compare",
        "BagOrPlainSeed.CoveredLine", "BagOrPlainSeed.PlainCostLines", "BagOrder.For", "Finding.InOrder",
        // To move: the lots of a kind.
        "CropKind.FullRange", "FullStandRates.For", "PureLiveSeedRate.op_Multiply", "RankedLot.CostFor", "RankedLot.CostLine",
        "RankedLot.PackagesFor", "SeedLot.Cautions", "SeedLotComparison.Rank",
        // To move: the recommendation systems.
        "CropRows.UnitOf", "CropUse.Browsed", "CropUse.CarriedOff", "KindProxy.RowIn", "SystemComparison.About", "SystemComparison.For",
        // The door itself: the comparison is asked for, then said.
        "PlanComparing.CompareLime",
    ];

    private static IEnumerable<string> Asked =>
        from type in HouseAssembly.AllTypes
        where HouseAssembly.RoomOf(type) == "Sheets"
        from method in IlReader.MethodsOf(type)
        from called in IlReader.Mentions(method).Select(m => m.Member).OfType<MethodBase>()
        let owner = called.DeclaringType!
        where owner.Assembly == HouseAssembly.Library && HouseAssembly.RoomOf(owner) is { } room && room != "Sheets"
        where !called.Name.StartsWith("get_", StringComparison.Ordinal) && called.Name is not ("ToString" or "ShowWork") && owner != typeof(Amounts)
        select $"{owner.Name}.{called.Name}";

    [Fact]
    public void The_sheets_ask_no_room_for_more_than_today() =>
        Assert.Equal(Exceptions.Order(StringComparer.Ordinal), Asked.Distinct().Order(StringComparer.Ordinal));

    [Fact]
    public void The_sheets_make_nothing_of_another_room() => Assert.Empty(Asked.Where(c => c.EndsWith("..ctor", StringComparison.Ordinal)));
}
