using System.Reflection;
using System.Reflection.Emit;

namespace PlotAgronomy.Tests.House;

/// <summary>Reads the members that a method's IL mentions.</summary>
internal static class IlReader
{
    private static readonly Dictionary<short, OpCode> Codes = typeof(OpCodes).GetFields(BindingFlags.Public | BindingFlags.Static)
        .Select(f => (OpCode)f.GetValue(null)!).ToDictionary(c => c.Value);

    internal const BindingFlags Everything = BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;

    internal static IEnumerable<MethodBase> MethodsOf(Type type) =>
        type.GetMethods(Everything).Cast<MethodBase>().Concat(type.GetConstructors(Everything));

    /// <summary>Every member a method mentions; a type before a call is the type the call is constrained to.</summary>
    internal static IEnumerable<(OpCode Code, MemberInfo Member)> Mentions(MethodBase method)
    {
        Type[]? typeArguments = method.DeclaringType is { IsGenericType: true } owner ? owner.GetGenericArguments() : null;
        Type[]? methodArguments = method.IsGenericMethod ? method.GetGenericArguments() : null;
        foreach (var (code, token) in Steps(method))
        {
            if (code.OperandType is OperandType.InlineMethod or OperandType.InlineField or OperandType.InlineType or OperandType.InlineTok)
            {
                yield return (code, method.Module.ResolveMember(token, typeArguments, methodArguments)!);
            }
        }
    }

    /// <summary>Every text a method holds; a constant stands where it is used.</summary>
    internal static IEnumerable<string> Texts(MethodBase method) =>
        Steps(method).Where(s => s.Code.OperandType == OperandType.InlineString).Select(s => method.Module.ResolveString(s.Token));

    /// <summary>Every step with the first four bytes of its operand.</summary>
    private static IEnumerable<(OpCode Code, int Token)> Steps(MethodBase method)
    {
        byte[]? il = method.GetMethodBody()?.GetILAsByteArray();
        if (il is null)
        {
            yield break;
        }

        int at = 0;
        while (at < il.Length)
        {
            short value = il[at++];
            if (value == 0xFE)
            {
                value = (short)(0xFE00 | il[at++]);
            }

            var code = Codes[value];
            yield return (code, at + 4 <= il.Length ? BitConverter.ToInt32(il, at) : 0);
            at += code.OperandType switch
            {
                OperandType.InlineNone => 0,
                OperandType.ShortInlineBrTarget or OperandType.ShortInlineI or OperandType.ShortInlineVar => 1,
                OperandType.InlineVar => 2,
                OperandType.InlineI8 or OperandType.InlineR => 8,
                OperandType.InlineSwitch => 4 + 4 * BitConverter.ToInt32(il, at),
                _ => 4,
            };
        }
    }
}
