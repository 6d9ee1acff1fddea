using System.Collections.Immutable;
using System.Reflection;
using System.Runtime.CompilerServices;
using System.Text.RegularExpressions;
using PlotAgronomy.Calendar;
using PlotAgronomy.Columns;
using PlotAgronomy.Planning;
using PlotAgronomy.Records;
using PlotAgronomy.Sheets;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.House;

/// <summary>Every answer of a room is reached from a door, and every fact of a plan is read behind one.</summary>
/// <remarks>The doors are <c>plan.Solve()</c> with the getters of its answers, the comparisons, and the sample's calibration. What is
/// only for code stands in <c>doors-from-code.txt</c>: type, what the user who calls it wants, and the page whose example names
/// it.</remarks>
public partial class DoorTests
{
    private const int MostFromCode = 40;

    /// <summary>A kind is an identity of the catalog with its own observations, no field of a plan.</summary>
    private static readonly Type[] Identities = [typeof(CropKind)];

    /// <summary>Fields that are said and not reckoned with, each with the reason.</summary>
    private static readonly Dictionary<string, string> OnlySaid = new()
    {
        ["Plot.Name"] = "a name, which the sheet says",
        ["PlannedSpreader.Name"] = "a name, which the sheet says",
        ["SoilReport.HumicMatter"] = "printed beside the soil class that follows from it, and the class is read",
        ["SeedTag.NetWeight"] = "the bag of a store blend is bought by the package and price of its own",
        ["SeedTag.TestMonth"] = "the month of each kind goes before that of the tag; lots of a plan have their own",
        ["SeedTag.LotNumber"] = "a name",
        ["SeedTag.IsPreinoculated"] = "a store blend is compared by price and living seed",
    };

    private static readonly Lazy<ReachedCode> Solved = new(() =>
    {
        var reached = new ReachedCode(HouseAssembly.Library);
        reached.From([
            typeof(PlanSolver).GetMethod(nameof(PlanSolver.Solve))!,
            .. IlReader.MethodsOf(typeof(StakesOfAnswers)),
            .. GettersOf([typeof(PlotAnswers), typeof(PlanStakes)]),
        ]);
        return reached;
    });

    private static readonly Lazy<ReachedCode> Compared = new(() =>
    {
        var reached = new ReachedCode(HouseAssembly.Library);
        var asked = typeof(PlanComparing).GetMethods(BindingFlags.Public | BindingFlags.Static);
        reached.From([.. asked, .. GettersOf([.. asked.Select(a => a.ReturnType)])]);
        return reached;
    });

    private static readonly Lazy<ReachedCode> Calibrated = new(() =>
    {
        var console = typeof(Sample.Commands.CalibrateCommand).Assembly;
        var reached = new ReachedCode(HouseAssembly.Library, console);
        reached.From(IlReader.MethodsOf(typeof(Sample.Commands.CalibrateCommand)));
        return reached;
    });

    /// <summary>The day of sowing of a plan, by a forecast that was handed in.</summary>
    private static readonly Lazy<ReachedCode> Timed = new(() =>
    {
        var reached = new ReachedCode(HouseAssembly.Library);
        Type[] doors = [typeof(PlanTiming), typeof(PlanField)];
        MethodInfo[] asked = [.. doors.SelectMany(d => d.GetMethods(BindingFlags.Public | BindingFlags.Static))];
        reached.From([.. asked, .. GettersOf([.. asked.Select(a => a.ReturnType), typeof(PlantingDecision), typeof(SeasonWork), typeof(PlannedWalk)])]);
        return reached;
    });

    /// <summary>The plot book of a plan: what is recorded, told and reviewed; and several plans together.</summary>
    private static readonly Lazy<ReachedCode> Booked = new(() =>
    {
        var reached = new ReachedCode(HouseAssembly.Library);
        Type[] doors = [typeof(PlotRecord), typeof(PlotHistory), typeof(PlanReview), typeof(PropertyPlan), typeof(PlansSideBySide)];
        reached.From([typeof(PropertyPlan).GetMethod(nameof(PropertyPlan.Within))!, .. doors.SelectMany(d => d.GetMethods(BindingFlags.Public | BindingFlags.Static | BindingFlags.DeclaredOnly)), .. GettersOf([.. doors])]);
        return reached;
    });

    /// <summary>A table of soil tests: what is read of it and answered.</summary>
    private static readonly Lazy<ReachedCode> Tabled = new(() =>
    {
        var reached = new ReachedCode(HouseAssembly.Library);
        Type[] doors = [typeof(ReportTable), typeof(ReportAnswers), typeof(LaboratoryProfile)];
        reached.From([.. doors.SelectMany(d => d.GetMethods(BindingFlags.Public | BindingFlags.Static | BindingFlags.DeclaredOnly)), .. GettersOf([.. doors, typeof(ReportAnswer)])]);
        return reached;
    });

    private static HashSet<Type> MadeBehindADoor => [.. Tabled.Value.Made, .. Booked.Value.Made, .. Timed.Value.Made, .. Solved.Value.Made, .. Compared.Value.Made, .. Calibrated.Value.Made];

    private static ImmutableArray<(string Type, string Want, string Page)> FromCode =>
        [
            .. File.ReadLines(Path.Combine(AppContext.BaseDirectory, "House/doors-from-code.txt"))
                .Select(line => line.Split('|', StringSplitOptions.TrimEntries))
                .Select(cells => (cells[0], cells[1], cells[2])),
        ];

    [Fact]
    public void Every_result_is_made_behind_a_door_or_listed_as_one_for_code()
    {
        var made = MadeBehindADoor;
        var listed = FromCode.Select(row => row.Type).ToHashSet();
        string missing = string.Join('\n', Results().Where(t => !made.Contains(t) && !listed.Contains(t.Name)).Select(t => t.FullName).Order());
        Assert.True(missing.Length == 0, missing);
    }

    [Fact]
    public void The_list_of_results_for_code_is_short_and_holds_no_others()
    {
        Assert.True(FromCode.Length <= MostFromCode, $"{FromCode.Length} rows, at most {MostFromCode}");
        var made = MadeBehindADoor;
        var alone = Results().Where(t => !made.Contains(t)).Select(t => t.Name).ToHashSet();
        Assert.Empty(FromCode.Select(row => row.Type).Where(type => !alone.Contains(type)));
        Assert.All(FromCode, row => Assert.EndsWith("?", row.Want, StringComparison.Ordinal));
    }

    [Fact]
    public void An_example_names_every_result_for_code() =>
        Assert.Empty(FromCode.Where(row => !Examples(row.Page).Any(code => Regex.IsMatch(code, $@"\b{row.Type}\b"))).Select(row => $"{row.Type}: {row.Page}"));

    [Fact]
    public void Every_fact_of_a_plan_is_read_behind_a_door()
    {
        var read = Solved.Value.Mentions.Concat(Compared.Value.Mentions).Concat(Timed.Value.Mentions)
            .Select(m => m.Member).OfType<MethodInfo>().Where(m => m.Name.StartsWith("get_", StringComparison.Ordinal))
            .Select(m => (Definition(m.DeclaringType!), m.Name)).ToHashSet();
        var unread = Facts().Where(f => !read.Contains((Definition(f.DeclaringType!), $"get_{f.Name}"))).Select(f => $"{f.DeclaringType!.Name}.{f.Name}").ToList();
        string missing = string.Join('\n', unread.Except(OnlySaid.Keys));
        Assert.True(missing.Length == 0, missing);
        Assert.Empty(OnlySaid.Keys.Except(unread));
    }

    [Fact]
    public void The_facts_are_those_of_the_plan_and_all_it_holds()
    {
        var types = Facts().Select(f => f.DeclaringType!.Name).ToHashSet();
        Assert.Superset(new HashSet<string> { "PlotPlan", "Plot", "PlannedKind", "Offer`1", "SeedLot", "PlannedSpreader", "SpreaderRun", "PrintedAdvice", "SoilReport" }, types);
    }

    /// <summary>Results that show their working, and public classes that only the library makes.</summary>
    private static IEnumerable<Type> Results() =>
        HouseAssembly.PublicTypes.Where(t => t is { IsClass: true, IsAbstract: false }
            && (typeof(IWorkedResult).IsAssignableFrom(t) || t.GetConstructors(IlReader.Everything & ~BindingFlags.Static).Any(c => c.IsAssembly))
            && t.GetConstructors().Length == 0);

    /// <summary>The public getters of the answers and of all they hold; facts stay out.</summary>
    private static IEnumerable<MethodInfo> GettersOf(ImmutableArray<Type> answers)
    {
        var seen = new HashSet<Type>();
        var open = new Stack<Type>(answers);
        while (open.TryPop(out var type))
        {
            if (type.Assembly != HouseAssembly.Library || IsFact(type) || !seen.Add(type))
            {
                continue;
            }

            foreach (var property in type.GetProperties(BindingFlags.Public | BindingFlags.Instance))
            {
                yield return property.GetMethod!;
                foreach (var part in Parts(property.PropertyType))
                {
                    open.Push(part);
                }
            }
        }
    }

    /// <summary>Every property that a caller may set, of a plan and of what these properties hold.</summary>
    private static IEnumerable<PropertyInfo> Facts()
    {
        var seen = new HashSet<Type>();
        var open = new Stack<Type>([typeof(PlotPlan)]);
        while (open.TryPop(out var type))
        {
            if (type.Assembly != HouseAssembly.Library || Identities.Contains(type) || !seen.Add(type))
            {
                continue;
            }

            foreach (var property in type.GetProperties(BindingFlags.Public | BindingFlags.Instance).Where(CanBeSet))
            {
                yield return property;
                foreach (var part in Parts(property.PropertyType).Where(IsFact))
                {
                    open.Push(part);
                }
            }
        }
    }

    private static Type Definition(Type type) => type.IsConstructedGenericType ? type.GetGenericTypeDefinition() : type;

    private static bool CanBeSet(PropertyInfo property) =>
        property.SetMethod is { IsPublic: true } set && set.ReturnParameter.GetRequiredCustomModifiers().Contains(typeof(IsExternalInit));

    private static bool IsFact(Type type) => type is { IsClass: true } && type.GetConstructor([]) is not null && type.GetProperties().Any(CanBeSet);

    private static IEnumerable<Type> Parts(Type type) =>
        type.HasElementType ? Parts(type.GetElementType()!)
        : type.IsConstructedGenericType ? type.GetGenericArguments().SelectMany(Parts).Append(type.GetGenericTypeDefinition())
        : [type];

    private static IEnumerable<string> Examples(string page) =>
        CodeBlock().Matches(File.ReadAllText(Repository.PathOf(page))).Select(m => m.Groups[1].Value);

    [GeneratedRegex("```csharp\n(.*?)```", RegexOptions.Singleline)]
    private static partial Regex CodeBlock();
}
