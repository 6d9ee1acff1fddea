using System.Reflection;

namespace PlotAgronomy.Tests.House;

/// <summary>The words make no sum and no choice: of other rooms the sheets call only getters of properties, <c>ToString</c>,
/// <c>ShowWork</c> and <c>Amounts</c>, and refuse what is no text by <c>Guard</c>.</summary>
public class WordsOnlySayTests
{
    private const int MostExceptions = 6;

    /// <summary>What is called beyond that, and why.</summary>
    private static readonly Dictionary<string, string> Exceptions = new()
    {
        ["Currency.Print"] = "money as every room writes it",
        ["CropRows.WordsFor"] = "the words of a crop row, from its table",
        ["NutrientWords.InFull"] = "a yield's unit within a sentence",
        ["PlantNutrients.InFull"] = "a nutrient with its sign",
        ["Answer`1.TryGet"] = "the value of an answer, where it is given",
        ["Answers.OrNull"] = "the value of an answer, or nothing",
    };

    private static IEnumerable<string> Asked =>
        from type in HouseAssembly.AllTypes
        where HouseAssembly.RoomOf(type) == "Sheets"
        from method in IlReader.MethodsOf(type)
        from called in IlReader.Mentions(method).Select(m => m.Member).OfType<MethodBase>()
        let owner = called.DeclaringType!
        where owner.Assembly == HouseAssembly.Library && HouseAssembly.RoomOf(owner) is { } room && room != "Sheets"
        where !called.Name.StartsWith("get_", StringComparison.Ordinal) && called.Name is not ("ToString" or "ShowWork") && owner != typeof(Amounts) && owner != typeof(Guard)
        select $"{owner.Name}.{called.Name}";

    [Fact]
    public void The_sheets_ask_no_room_for_more_than_words()
    {
        Assert.Equal(string.Join('\n', Exceptions.Keys.Order(StringComparer.Ordinal)), string.Join('\n', Asked.Distinct().Order(StringComparer.Ordinal)));
        Assert.True(Exceptions.Count <= MostExceptions, $"{Exceptions.Count} names, at most {MostExceptions}");
    }

    [Fact]
    public void The_sheets_make_nothing_of_another_room() => Assert.Empty(Asked.Where(c => c.EndsWith("..ctor", StringComparison.Ordinal)));
}
