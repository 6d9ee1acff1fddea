using System.Collections.Immutable;
using System.Globalization;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Seeds;

/// <summary>How long after its test seed may be shipped or sold: one jurisdiction's limit for one class of seed.</summary>
/// <remarks>The limit is about the sale, not about planting: old seed may be planted; test it first. Laws change: the state
/// department of agriculture says what holds today.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed class TestDateRule
{
    private static readonly Catalog<TestDateRule> Rules = new(
        "test-date rule",
        () => new Table<TestDateRule>("Seeds/Data/test-date-limits.csv", FromRow).Rows,
        r => r.Id,
        r => r.Origin.Status
    );

    private readonly ImmutableArray<string> kindIds;

    private TestDateRule(ImmutableArray<string> kindIds, Origin origin)
    {
        this.kindIds = kindIds;
        Origin = origin;
    }

    /// <summary>Gets the rules whose law was read.</summary>
    public static ImmutableArray<TestDateRule> All => Rules.All;

    /// <summary>Gets the stable id, such as <c>federal-general</c>.</summary>
    public required string Id { get; init; }

    /// <summary>Gets the state whose law it is; null for federal law, which governs shipment between states.</summary>
    public Place? State { get; private init; }

    /// <summary>Gets the jurisdiction in words.</summary>
    public required string Jurisdiction { get; init; }

    /// <summary>Gets the seed it applies to, in words.</summary>
    public required string AppliesTo { get; init; }

    /// <summary>Gets the months after the month of test.</summary>
    public required int Months { get; init; }

    /// <summary>Gets the months for hermetically sealed containers, or null when no limit is published.</summary>
    public int? HermeticMonths { get; init; }

    /// <summary>Gets how the jurisdiction counts, in words.</summary>
    public required string CountingRule { get; init; }

    /// <summary>Gets where it stands and how well that is known.</summary>
    public Origin Origin { get; }

    /// <summary>Finds a rule, checked or not.</summary>
    /// <param name="id">Id of the rule.</param>
    /// <returns>The rule.</returns>
    /// <exception cref="KeyNotFoundException">No rule has this id; the message lists all.</exception>
    public static TestDateRule Find(string id) => Rules.Find(id);

    /// <summary>The rule for a kind where it is sold.</summary>
    /// <param name="state">State in which it is sold; null for shipment between states, which federal law governs.</param>
    /// <param name="kind">Kind.</param>
    /// <returns>The rule that names the kind, or else the general one.</returns>
    /// <exception cref="KeyNotFoundException">No rule of this state is known; the message lists the states.</exception>
    public static TestDateRule For(Place? state, CropKind kind)
    {
        ArgumentNullException.ThrowIfNull(kind);
        TestDateRule? general = null;
        foreach (var rule in Rules.Everything)
        {
            if (rule.State != state)
            {
                continue;
            }

            if (rule.kindIds.Contains(kind.Id))
            {
                return rule;
            }

            general ??= rule.kindIds.IsEmpty ? rule : null;
        }

        return general
            ?? throw new KeyNotFoundException(
                $"No test-date rule of {state} is known; there are: {string.Join(", ", States())}."
            );
    }

    /// <summary>Last legal day.</summary>
    /// <param name="test">Month of test.</param>
    /// <param name="hermetic">Whether the container is hermetically sealed and lawful as such.</param>
    /// <returns>Last day of the month that lies the limit's months after the month of test.</returns>
    /// <exception cref="InvalidOperationException">No limit is published for sealed containers.</exception>
    /// <remarks>last day of (month of test + months); 7 CFR 201.22 (SEED-S17) and state law.</remarks>
    public DateOnly LastDay(TestMonth test, bool hermetic = false) =>
        test.LastDayOfMonthLater(
            hermetic
                ? HermeticMonths
                    ?? throw new InvalidOperationException($"{Jurisdiction} publishes no limit for sealed containers.")
                : Months
        );

    /// <summary>Looks whether a test is still current on a day.</summary>
    /// <param name="test">Month of test.</param>
    /// <param name="day">Day of shipment or sale.</param>
    /// <param name="hermetic">Whether the container is hermetically sealed and lawful as such.</param>
    /// <returns>A finding when the last legal day has passed; else null.</returns>
    /// <exception cref="InvalidOperationException">No limit is published for sealed containers.</exception>
    public Finding? Check(TestMonth test, DateOnly day, bool hermetic = false)
    {
        var last = LastDay(test, hermetic);
        return day <= last
            ? null
            : FindingCatalog.Create(
                SeedCodes.TestOld,
                ("test", test.ToString()),
                ("jurisdiction", Jurisdiction),
                ("last", last.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture))
            );
    }

    /// <summary>Whether a rule of a state is known.</summary>
    internal static bool IsKnownFor(Place state) => States().Contains(state);

    private static IEnumerable<Place> States() => Rules.Everything.Select(r => r.State).OfType<Place>().Distinct();

    private static TestDateRule FromRow(CsvRow row) =>
        new(row.List("kind_ids"), row.Origin())
        {
            Id = row.Text("id"),
            State = row.TextOrNull("place_id") is { } place ? Place.Find(place) : null,
            Jurisdiction = row.Text("jurisdiction"),
            AppliesTo = row.Text("applies_to"),
            Months = row.Integer("months"),
            HermeticMonths = row.TextOrNull("hermetic_months") is null ? null : row.Integer("hermetic_months"),
            CountingRule = row.Text("counting_rule"),
        };

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Id;
}
