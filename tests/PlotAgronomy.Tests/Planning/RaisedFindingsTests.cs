using System.Collections;
using System.Reflection;
using PlotAgronomy.DrawnPlans;
using PlotAgronomy.Planning;
using PlotAgronomy.Reference;
using PlotAgronomy.Tests.House;
using PlotAgronomy.Tests.Sheets;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.Planning;

/// <summary>Every warning that any room raises for a plan is in its answers and on its sheet.</summary>
public class RaisedFindingsTests
{
    private const int Parts = 8, Each = 15;

    /// <summary>Properties that hold what is not done: other offers, other plans, what would be if.</summary>
    private static readonly HashSet<string> NotDone =
        ["Offers", "Others", "Cases", "Questions", "Fits", "Alone", "BestAlone", "Additions", "Lots", "Choice", "Plan", "Catalog", "Check"];

    private static readonly string[] Written =
    [
        "samples/data/clover-lots.json", "samples/data/fall-blend.json", "samples/data/frost-seeding.json", "samples/data/store-blend.json",
        .. Directory.EnumerateFiles(Repository.PathOf("tests/PlotAgronomy.Tests/Plans"), "p*.json").Order(StringComparer.Ordinal),
    ];

    public static TheoryData<int> Numbers => [.. Enumerable.Range(0, Parts)];

    [Fact]
    public void Every_warning_of_a_written_plan_is_in_its_answers_and_on_its_sheet()
    {
        string failures = string.Join('\n', Written.SelectMany(f => Failures(f, File.ReadAllText(Repository.PathOf(f)))).Distinct());
        Assert.True(failures.Length == 0, failures);
    }

    [Theory, MemberData(nameof(Numbers))]
    public void Every_warning_of_a_drawn_plan_is_in_its_answers_and_on_its_sheet(int part)
    {
        var numbers = Enumerable.Range(part * Each, Each);
        string failures = string.Join('\n', numbers.SelectMany(n => Failures($"{n}", PlanDraw.Of(n, 0).ToJsonString())).Distinct());
        Assert.True(failures.Length == 0, failures);
    }

    private static IEnumerable<string> Failures(string name, string json)
    {
        if (PlanFile.Read(json).Plan is not { } plan)
        {
            yield break;
        }

        var answers = plan.Solve();
        var told = answers.Findings.Select(f => f.Code).ToHashSet();
        string front = Flat(TwoPagesTests.Front(answers, 200));
        foreach (var (finding, path) in Raised(answers).Where(r => r.Finding.Severity == FindingSeverity.Warning).DistinctBy(r => r.Finding.Code))
        {
            if (!told.Contains(finding.Code))
            {
                yield return $"{name}: {path} raises {finding.Code}, which is not among the findings";
            }
        }

        foreach (var finding in answers.Findings.Where(f => f.Severity == FindingSeverity.Warning))
        {
            if (!TwoPagesTests.Joined(answers, finding).Any(t => front.Contains(Flat(t), StringComparison.OrdinalIgnoreCase)))
            {
                yield return $"{name}: {finding.Code} is not on the front of the sheet";
            }
        }
    }

    private static string Flat(string text) => string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    /// <summary>The findings of every answer that is reached from those of the plan by its properties.</summary>
    private static IEnumerable<(Finding Finding, string Path)> Raised(PlotAnswers answers)
    {
        var seen = new HashSet<object>(ReferenceEqualityComparer.Instance);
        var open = new Stack<(object Held, string Path)>([(answers, "")]);
        while (open.TryPop(out var at))
        {
            if (at.Held is Finding finding)
            {
                yield return (finding, at.Path);
                continue;
            }

            if (at.Held is IEnumerable many and not string)
            {
                foreach (object item in many)
                {
                    open.Push((item, at.Path));
                }

                continue;
            }

            if (at.Held.GetType().Assembly != HouseAssembly.Library || !seen.Add(at.Held))
            {
                continue;
            }

            if (ValueOf(at.Held) is { } value)
            {
                open.Push((value, at.Path));
            }

            foreach (var property in at.Held.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance).Where(IsFollowed))
            {
                if (property.GetValue(at.Held) is { } held)
                {
                    open.Push((held, $"{at.Path}.{property.Name}"));
                }
            }
        }
    }

    private static object? ValueOf(object held) =>
        held.GetType() is { IsConstructedGenericType: true } type && type.GetGenericTypeDefinition() == typeof(Answer<>)
        && type.GetProperty("State")!.GetValue(held) is AnswerState.Given
            ? type.GetProperty("Value")!.GetValue(held)
            : null;

    /// <summary>An answer gives its value only where it is given.</summary>
    private static bool IsFollowed(PropertyInfo property) =>
        property.GetIndexParameters().Length == 0
        && !NotDone.Contains(property.Name)
        && !(property.DeclaringType is { IsConstructedGenericType: true } answer && answer.GetGenericTypeDefinition() == typeof(Answer<>) && property.Name == "Value");
}
