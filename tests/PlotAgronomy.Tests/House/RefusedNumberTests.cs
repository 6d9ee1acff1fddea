using System.Reflection;
using UnitsNet;

namespace PlotAgronomy.Tests.House;

/// <summary>Every public method refuses NaN and infinity where it takes a number, and negative amounts where it takes a quantity.</summary>
/// <remarks>UnitsNet itself refuses to make a quantity of NaN or infinity.</remarks>
public class RefusedNumberTests
{
    private static readonly Dictionary<Type, (object Plain, Func<double, object>? Make)> Samples = new()
    {
        [typeof(double)] = (1.0, x => x),
        [typeof(int)] = (1, null),
        [typeof(decimal)] = (1m, null),
        [typeof(bool)] = (false, null),
        [typeof(string)] = ("sample", null),
        [typeof(DateOnly)] = (new DateOnly(2026, 9, 1), null),
        [typeof(Fraction)] = (Fraction.FromPercent(90), null),
        [typeof(ApplicationRate)] = (ApplicationRate.FromPoundsPerAcre(40), null),
        [typeof(Mass)] = (Mass.FromPounds(10), x => Mass.FromPounds(x)),
        [typeof(Area)] = (Area.FromAcres(1), x => Area.FromAcres(x)),
        [typeof(Length)] = (Length.FromFeet(10), x => Length.FromFeet(x)),
        [typeof(Speed)] = (Speed.FromMilesPerHour(3), x => Speed.FromMilesPerHour(x)),
        [typeof(Volume)] = (Volume.FromCubicFeet(1), x => Volume.FromCubicFeet(x)),
        [typeof(MassFlow)] = (MassFlow.FromPoundsPerMinute(1), x => MassFlow.FromPoundsPerMinute(x)),
        [typeof(Density)] = (Density.FromPoundsPerCubicFoot(48), x => Density.FromPoundsPerCubicFoot(x)),
        [typeof(AreaDensity)] = (AreaDensity.FromKilogramsPerSquareMeter(0.01), x => AreaDensity.FromKilogramsPerSquareMeter(x)),
    };

    /// <summary>Arguments that the plain sample of their type does not suit: pH, and the depth of a sample.</summary>
    private static readonly Dictionary<string, object> Own = new()
    {
        ["LimeTrigger.Below.targetPh"] = 6.5,
        ["HomePh.FromValue.value"] = 6.5,
        ["SampledLayer.Measured.depth"] = Length.FromInches(6),
    };

    /// <summary>Methods for which a number that is not finite is an answer, not a mistake.</summary>
    private static readonly HashSet<string> Printing = ["Print", "EqualsWithin", "CompareTo", "Equals"];

    private static readonly double[] NotFinite = [double.NaN, double.PositiveInfinity, double.NegativeInfinity];

    private static readonly double[] Negative = [-1];

    public static TheoryData<string> Callables => [.. Methods().Select(Name).Distinct()];

    [Theory, MemberData(nameof(Callables))]
    public void Impossible_numbers_are_refused(string name)
    {
        foreach (var method in Methods().Where(m => Name(m) == name))
        {
            var parameters = method.GetParameters();
            for (int i = 0; i < parameters.Length; i++)
            {
                var type = Nullable.GetUnderlyingType(parameters[i].ParameterType) ?? parameters[i].ParameterType;
                if (!Samples.TryGetValue(type, out var sample) || sample.Make is null)
                {
                    continue;
                }

                foreach (double bad in type == typeof(double) ? NotFinite : Negative)
                {
                    var arguments = parameters.Select(SampleOf).ToArray();
                    arguments[i] = sample.Make(bad);
                    var thrown = Record.Exception(() => method.Invoke(null, arguments));
                    // Another argument may be what is refused: then nothing is known of this one.
                    Assert.True(thrown is TargetInvocationException { InnerException: ArgumentException { ParamName: var refused } } && refused == parameters[i].Name, $"{name}: {parameters[i].Name} = {bad} gave {thrown?.InnerException?.Message ?? "an answer"}");
                }
            }
        }
    }

    private static string Name(MethodInfo method) => $"{method.DeclaringType!.Name}.{method.Name}({string.Join(", ", method.GetParameters().Select(p => p.ParameterType.Name))})";

    private static IEnumerable<MethodInfo> Methods() =>
        from type in HouseAssembly.PublicTypes
        from method in type.GetMethods(BindingFlags.Public | BindingFlags.Static | BindingFlags.DeclaredOnly)
        where !method.IsGenericMethod && !Printing.Contains(method.Name)
        where method.GetParameters().All(p => CanSample(p.ParameterType)) && method.GetParameters().Any(p => Takes(p.ParameterType))
        select method;

    private static bool Takes(Type type) => Samples.TryGetValue(Nullable.GetUnderlyingType(type) ?? type, out var sample) && sample.Make is not null;

    private static bool CanSample(Type type) => (Nullable.GetUnderlyingType(type) ?? type) is var plain && (plain.IsEnum || Samples.ContainsKey(plain));

    private static object? SampleOf(ParameterInfo parameter)
    {
        var type = Nullable.GetUnderlyingType(parameter.ParameterType) ?? parameter.ParameterType;
        string place = $"{parameter.Member.DeclaringType!.Name}.{parameter.Member.Name}.{parameter.Name}";
        return Own.GetValueOrDefault(place) ?? (type.IsEnum ? Enum.GetValues(type).GetValue(0) : Samples[type].Plain);
    }
}
