namespace Estimator.Engine.Explanations;

/// <summary>A value together with the node that explains it.</summary>
/// <typeparam name="T">The value's type, which carries its unit.</typeparam>
/// <param name="Value">The value.</param>
/// <param name="Node">The node; its number equals the value in the node's unit.</param>
public readonly record struct Explained<T>(T Value, NodeRef Node);
