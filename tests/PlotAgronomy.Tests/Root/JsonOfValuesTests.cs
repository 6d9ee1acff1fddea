using System.Runtime.CompilerServices;
using System.Text.Json;
using System.Text.Json.Serialization;
using PlotAgronomy.Blends;
using PlotAgronomy.Fertilizers;
using PlotAgronomy.Land;
using PlotAgronomy.Liming;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Seeds;
using PlotAgronomy.Soil;
using PlotAgronomy.Tests.House;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.Root;

/// <summary>A value type comes back from JSON exactly as it went, or is refused; never as zero without a word.</summary>
public partial class JsonOfValuesTests
{
    /// <summary>Not a round number in binary nor in print.</summary>
    private const double Odd = 12.345678901234567;

    private static readonly object[] Values =
    [
        ApplicationRate.FromPoundsPerAcre(Odd),
        ApplicationRate.FromKilogramsPerHectare(Odd),
        Fraction.FromValue(Odd / 100),
        Fraction.FromPercent(85),
        new FindingValue("ph", "5.4"),
        CationCharge.FromMilliequivalentsPer100Grams(Odd),
        CationCharge.FromMilliequivalentsPer100CubicCentimeters(Odd),
        PoundsAndOunces.Nearest(Mass.FromPounds(Odd)),
        PoundsPerTonRange.Between(Odd, Odd + 1),
        new PercentRange(Odd, Odd + 1),
        Bearing.FromDegrees(Odd),
        MeasuredLength.FromLength(Length.FromMeters(Odd)),
        MeasuredLength.WithError(Length.FromMeters(Odd), Length.FromInches(1)),
        PlanePoint.FromFeet(Odd, -Odd),
        GeoPoint.FromDegrees(Odd, -Odd),
        Slope.FromDegrees(Odd),
        Slope.FromPercent(7),
        StepCount.FromDoublePaces(Odd),
        LimeBufferCapacity.AtEquilibrium(Odd),
        LimeBufferCapacity.FromThirtyMinutes(Odd),
        PureLiveSeedMass.FromPounds(Odd),
        PureLiveSeedRate.BroadcastPoundsPerAcre(Odd),
        BulkSeedMass.FromPounds(Odd),
        BulkSeedRate.DrilledPoundsPerAcre(Odd),
        BulkSeedRate.FromRate(ApplicationRate.FromPoundsPerAcre(Odd), SowingMethod.BroadcastUnderCover),
        PureLiveSeedRate.FromRate(ApplicationRate.FromPoundsPerAcre(Odd), SowingMethod.FrostSeeded),
        TestMonth.FromYearAndMonth(2026, 3),
        SeedDensity.FromSeedsPerSquareFoot(Odd),
        RowDensity.FromSeedsPerFoot(Odd),
        CropYield.FromBushelsPerAcre(Odd),
        CropYield.FromTonsPerAcre(Odd),
        StandTotal.Of(Odd, Odd + 1, Odd + 2),
    ];

    private static IEnumerable<Type> ValueTypes => HouseAssembly.PublicTypes.Where(t => t.IsValueType && !t.IsEnum);

    [Fact]
    public void Every_public_value_type_is_tried() =>
        Assert.Equal(ValueTypes.Select(t => t.Name).Order(StringComparer.Ordinal), Values.Select(v => v.GetType().Name).Distinct().Order(StringComparer.Ordinal));

    [Fact]
    public void Every_value_comes_back_exactly() =>
        Assert.All(Values, value =>
        {
            string json = JsonSerializer.Serialize(value, value.GetType());
            object? back = JsonSerializer.Deserialize(json, value.GetType());
            Assert.Equal(value, back);
            Assert.NotEqual(Activator.CreateInstance(value.GetType()), back);
            Assert.Equal(json, JsonSerializer.Serialize(back, value.GetType()));
        });

    [Fact]
    public void A_value_is_never_read_from_what_is_not_its_text() =>
        Assert.All(ValueTypes.Where(t => t != typeof(FindingValue)), type =>
            Assert.All(["{}", "{\"PoundsPerAcre\":20}", "20", "[]", "true", "null", "\"\"", "\"20\"", "\"20 furlongs\"", "\"-1 lb/ac\"", "\"NaN lb/ac\"", "\"99999999999999999999 lb 4 oz\""], json =>
                Assert.Throws<JsonException>(() => JsonSerializer.Deserialize(json, type))));

    /// <summary>Where nothing is a legal value it comes back; where it is not, it is refused.</summary>
    [Fact]
    public void A_default_comes_back_or_is_refused() =>
        Assert.All(ValueTypes, type =>
        {
            string json = JsonSerializer.Serialize(Activator.CreateInstance(type), type);
            if (type == typeof(LimeBufferCapacity) || type == typeof(TestMonth))
            {
                Assert.Throws<JsonException>(() => JsonSerializer.Deserialize(json, type));
            }
            else
            {
                Assert.Equal(Activator.CreateInstance(type), JsonSerializer.Deserialize(json, type));
            }
        });

    [Theory]
    [InlineData("20 lb/ac", 20), InlineData("0.01 ton/ac", 20), InlineData("1.5 oz/ac", 1.5 / 16)]
    public void A_rate_is_read_as_the_plan_file_writes_it(string text, double pounds) =>
        Assert.Equal(pounds, JsonSerializer.Deserialize<ApplicationRate>(JsonSerializer.Serialize(text)).PoundsPerAcre, 1e-12);

    [Theory]
    [InlineData("\"20 lb PLS/ac, drilled\"", "20 lb PLS/ac, drilled")]
    public void Bulk_seed_is_not_read_from_living_seed(string json, string text)
    {
        Assert.Equal(text, JsonSerializer.Deserialize<PureLiveSeedRate>(json).ToString());
        Assert.Throws<JsonException>(() => JsonSerializer.Deserialize<BulkSeedRate>(json));
    }

    [Fact]
    public void A_paced_length_says_what_to_keep_instead() =>
        Assert.Contains("StepCount", Assert.Throws<NotSupportedException>(() => JsonSerializer.Serialize(MeasuredLength.FromPaces(100, 0.02, 1))).Message, StringComparison.Ordinal);

    [Fact]
    public void A_refusal_names_the_type_and_the_text() =>
        Assert.Contains("'20 acres' is no Fraction", Assert.Throws<JsonException>(() => JsonSerializer.Deserialize<Fraction>("\"20 acres\"")).Message, StringComparison.Ordinal);

    [Fact]
    public void Values_inside_a_record_come_back_and_so_do_keys()
    {
        var order = new SeedNote(BulkSeedRate.BroadcastPoundsPerAcre(20), Fraction.FromPercent(85), new() { [ApplicationRate.FromPoundsPerAcre(2)] = GeoPoint.FromDegrees(44.5, -89.25) });
        string json = JsonSerializer.Serialize(order);
        Assert.Equal("""{"Rate":"20 lb bulk/ac, broadcast","Germination":"85 %","Places":{"2 lb/ac":"44.5, -89.25"}}""", json);
        var back = JsonSerializer.Deserialize<SeedNote>(json)!;
        Assert.Equal((order.Rate, order.Germination), (back.Rate, back.Germination));
        Assert.Equal(order.Places, back.Places);
    }

    [Theory]
    [MemberData(nameof(CultureScope.Treacherous), MemberType = typeof(CultureScope))]
    public void Values_do_not_follow_the_culture(string culture)
    {
        using var scope = new CultureScope(culture);
        Every_value_comes_back_exactly();
    }

    /// <summary>Every public type is a value that comes back, or refuses to be written and to be read.</summary>
    public static TheoryData<Type> Refusing =>
        [.. HouseAssembly.PublicTypes.Where(t => t is { IsValueType: false, IsSpecialName: false } && !(t.IsAbstract && t.IsSealed)
            && t.Namespace?.StartsWith("PlotAgronomy", StringComparison.Ordinal) == true && !t.IsNested && !t.IsGenericTypeDefinition
            && !typeof(Exception).IsAssignableFrom(t) && !typeof(JsonConverter).IsAssignableFrom(t))];

    [Theory, MemberData(nameof(Refusing), DisableDiscoveryEnumeration = true)]
    public void Any_other_public_type_refuses_in_both_directions_and_says_what_to_use(Type type)
    {
        var read = Assert.Throws<NotSupportedException>(() => JsonSerializer.Deserialize("{}", type));
        Assert.Contains($"{type.Name} has no JSON of its own", read.Message, StringComparison.Ordinal);
        Assert.Contains("ToJson()", read.Message, StringComparison.Ordinal);
        if (!type.IsAbstract)
        {
            object made = RuntimeHelpers.GetUninitializedObject(type);
            Assert.Equal(read.Message.Split(" Path:")[0], Assert.Throws<NotSupportedException>(() => JsonSerializer.Serialize(made, type)).Message.Split(" Path:")[0]);
        }
    }

    [Fact]
    public void Types_that_refuse_are_counted() => Assert.True(Refusing.Count > 200, $"{Refusing.Count}");

    /// <summary>Held in a type of the user's own, in a list, or named by what it shares with others.</summary>
    [Fact]
    public void What_holds_a_result_is_refused_with_it()
    {
        var sum = PureLiveSeed.BulkRate(PureLiveSeedRate.BroadcastPoundsPerAcre(8), SeedAnalysis.FromFractions(Fraction.FromPercent(98), Fraction.FromPercent(90)), ViabilityRule.GerminationOnly);
        Assert.Throws<NotSupportedException>(() => JsonSerializer.Serialize(new { Name = "a", Sum = sum }));
        Assert.Throws<NotSupportedException>(() => JsonSerializer.Serialize(new[] { sum }));
        Assert.Throws<NotSupportedException>(() => JsonSerializer.Serialize<IWorkedResult>(sum));
        Assert.Throws<NotSupportedException>(() => JsonSerializer.Serialize<object>(sum));
    }

    internal sealed record SeedNote(BulkSeedRate Rate, Fraction Germination, Dictionary<ApplicationRate, GeoPoint> Places);
}
