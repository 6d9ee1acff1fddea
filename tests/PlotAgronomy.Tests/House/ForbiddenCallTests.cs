using System.Reflection;
using System.Reflection.Emit;
using UnitsNet;

namespace PlotAgronomy.Tests.House;

/// <summary>Calls that the analyzer cannot see: interpolated quantities, comparers in generated code, the wall clock.</summary>
public class ForbiddenCallTests
{
    private static readonly HashSet<string> QuantityMembers =
        ["Equals", "op_Equality", "op_Inequality", "GetHashCode", "ToString", "Parse", "TryParse", "As", "ToUnit"];

    [Fact]
    public void No_quantity_is_compared_hashed_printed_or_parsed_by_UnitsNet()
    {
        var wrong = new SortedSet<string>(StringComparer.Ordinal);
        foreach (var (method, code, member, constrained) in Calls(HouseAssembly.Library))
        {
            bool ofQuantity = member.DeclaringType is { } owner && IsQuantity(owner) && QuantityMembers.Contains(member.Name);
            bool constrainedToQuantity = constrained is not null && IsQuantity(constrained) && QuantityMembers.Contains(member.Name);
            bool interpolated = member is MethodInfo { IsGenericMethod: true, Name: "AppendFormatted" } generic && generic.GetGenericArguments().Any(IsQuantity);
            bool generatedComparer = member.DeclaringType is { IsGenericType: true } comparer
                && comparer.GetGenericTypeDefinition() == typeof(EqualityComparer<>) && comparer.GetGenericArguments().Any(IsQuantity);
            bool boxed = code == OpCodes.Box && member is Type box && IsQuantity(box);
            if (ofQuantity || constrainedToQuantity || interpolated || generatedComparer || boxed)
            {
                wrong.Add($"{method.DeclaringType?.FullName}.{method.Name}: {member.DeclaringType?.Name}.{member.Name}");
            }
        }

        Assert.Empty(wrong);
    }

    /// <summary>What opens files, and only in a folder that its caller named.</summary>
    private static readonly string[] OpensWhatItWasGiven = ["PlotAgronomy.Records.PlotBookFolder"];

    [Fact]
    public void No_wall_clock_no_hidden_randomness_no_file_no_network()
    {
        string[] forbidden =
        [
            "System.DateTime.get_Now", "System.DateTime.get_UtcNow", "System.DateTime.get_Today", "System.DateTimeOffset.get_Now",
            "System.DateTimeOffset.get_UtcNow", "System.TimeProvider.get_System", "System.Random.get_Shared", "System.Guid.NewGuid",
            "System.Environment.get_TickCount", "System.Environment.GetEnvironmentVariable", "System.Diagnostics.Stopwatch.GetTimestamp",
        ];
        string[] forbiddenTypes = ["System.IO.File", "System.IO.Directory", "System.IO.FileStream", "System.Net.Http.HttpClient", "System.Console", "System.Globalization.CultureInfo.get_CurrentCulture"];
        var wrong = Calls(HouseAssembly.Library)
            .Where(c => !OpensWhatItWasGiven.Contains(c.Method.DeclaringType?.FullName))
            .Where(c => forbidden.Contains($"{c.Member.DeclaringType?.FullName}.{c.Member.Name}") || forbiddenTypes.Contains(c.Member.DeclaringType?.FullName)
                || forbiddenTypes.Contains($"{c.Member.DeclaringType?.FullName}.{c.Member.Name}"))
            .Select(c => $"{c.Method.DeclaringType?.FullName}.{c.Method.Name}: {c.Member.DeclaringType?.FullName}.{c.Member.Name}")
            .Distinct();
        Assert.Empty(wrong);
    }

    /// <summary>What an assembly does not refer to, it cannot call: <c>.github/SECURITY.md</c> promises this.</summary>
    [Fact]
    public void Nothing_that_reaches_a_network_another_process_or_foreign_code_is_referred_to()
    {
        string[] reach = ["System.Net", "System.Diagnostics.Process", "System.Runtime.Loader", "System.Reflection.Emit", "Microsoft.Win32"];
        Assert.Empty(HouseAssembly.Library.GetReferencedAssemblies().Select(a => a.Name!).Where(name => reach.Any(r => name.StartsWith(r, StringComparison.Ordinal))));
    }

    [Fact]
    public void The_reader_of_the_IL_sees_an_interpolated_quantity()
    {
        var bad = typeof(ForbiddenCallTests).GetMethod(nameof(PrintsWrongly), BindingFlags.NonPublic | BindingFlags.Static)!;
        Assert.Contains(IlReader.Mentions(bad), m => m.Member is MethodInfo { IsGenericMethod: true } g && g.GetGenericArguments().Any(IsQuantity));
    }

    private static string PrintsWrongly(Mass mass) => $"{mass}";

    private static bool IsQuantity(Type type) => typeof(IQuantity).IsAssignableFrom(type) && type != typeof(object);

    private static IEnumerable<(MethodBase Method, OpCode Code, MemberInfo Member, Type? Constrained)> Calls(Assembly assembly)
    {
        foreach (var method in assembly.GetTypes().SelectMany(IlReader.MethodsOf))
        {
            Type? constrained = null;
            foreach (var (code, member) in IlReader.Mentions(method))
            {
                if (code == OpCodes.Constrained)
                {
                    constrained = (Type)member;
                    continue;
                }

                yield return (method, code, member, constrained);
                constrained = null;
            }
        }
    }
}
